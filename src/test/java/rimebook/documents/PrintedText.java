package rimebook.documents;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;

/** What can be read on a document, without spaces, since a line break may be one. */
final class PrintedText {

	/** How high the foot of a sheet is, in points. */
	private static final int FOOT = 76;

	private static final int[] CLOSER = { 150, 220, 300 };

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

	/** What the drawing on the first sheet says to a camera, which comes closer. */
	static String scanned(byte[] pdf) {
		try (PDDocument document = Loader.loadPDF(pdf)) {
			for (int dots : CLOSER) {
				Optional<String> read = scanned(new PDFRenderer(document).renderImageWithDPI(0, dots));
				if (read.isPresent()) {
					return read.get();
				}
			}
			throw new AssertionError("Nothing to scan on the first sheet");
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static Optional<String> scanned(BufferedImage sheet) {
		int width = sheet.getWidth();
		RGBLuminanceSource light = new RGBLuminanceSource(width, sheet.getHeight(),
				sheet.getRGB(0, 0, width, sheet.getHeight(), null, 0, width));
		try {
			return Optional.of(new QRCodeReader()
				.decode(new BinaryBitmap(new HybridBinarizer(light)), Map.of(DecodeHintType.TRY_HARDER, true))
				.getText());
		}
		catch (ReaderException ex) {
			return Optional.empty();
		}
	}

	/** The same of what is looked for. */
	static String words(String text) {
		return text.replaceAll("\\s", "");
	}

}
