package rimebook.documents;

import java.io.IOException;
import java.io.UncheckedIOException;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** What can be read on a document, without spaces, since a line break may be one. */
final class PrintedText {

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

	/** The same of what is looked for. */
	static String words(String text) {
		return text.replaceAll("\\s", "");
	}

}
