package rimebook.documents;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;

import rimebook.testsupport.ScannedPaper;

/** What can be read on a document, without spaces, since a line break may be one. */
final class PrintedText {

	/** How high the foot of a sheet is, in points. */
	private static final int FOOT = 76;

	private PrintedText() {
	}

	/** The words of a PDF. */
	static String of(byte[] pdf) {
		try (PDDocument document = Loader.loadPDF(pdf)) {
			return words(new PDFTextStripper().getText(document));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** How many sheets it has. */
	static int sheets(byte[] pdf) {
		try (PDDocument document = Loader.loadPDF(pdf)) {
			return document.getNumberOfPages();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** The numbers of sheets with nothing above the foot. */
	static List<Integer> emptySheets(byte[] pdf) {
		try (PDDocument document = Loader.loadPDF(pdf)) {
			List<Integer> empty = new ArrayList<>();
			for (PDPage sheet : document.getPages()) {
				PDFTextStripperByArea area = new PDFTextStripperByArea();
				area.addRegion("body", new Rectangle2D.Float(0, 0, sheet.getMediaBox().getWidth(),
						sheet.getMediaBox().getHeight() - FOOT));
				area.extractRegions(sheet);
				if (area.getTextForRegion("body").isBlank()) {
					empty.add(document.getPages().indexOf(sheet) + 1);
				}
			}
			return empty;
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** What the drawing on the first sheet says to a camera. */
	static String scanned(byte[] pdf) {
		try (PDDocument document = Loader.loadPDF(pdf)) {
			return ScannedPaper.of(document)
				.orElseThrow(() -> new AssertionError("Nothing to scan on the first sheet"));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** The same of what is looked for. */
	static String words(String text) {
		return text.replaceAll("\\s", "");
	}

}
