package rimebook.pages;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitWidthDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/**
 * Documents of {@link PdfPage} bound into one. Each keeps its own sheet numbers, head and
 * foot; a list beside the sheets leads to the first of each.
 */
public final class BoundPdf {

	private BoundPdf() {
	}

	/**
	 * Bind them.
	 * @param title what all of it is called
	 * @param parts in their order, at least one
	 * @param made when it was made, UTC
	 * @return the bytes of the document
	 */
	public static byte[] of(String title, List<Part> parts, Instant made) {
		List<PDDocument> opened = new ArrayList<>();
		try (ByteArrayOutputStream document = new ByteArrayOutputStream()) {
			for (Part part : parts) {
				opened.add(Loader.loadPDF(part.document()));
			}
			PDDocument bound = opened.get(0);
			PDDocumentOutline list = new PDDocumentOutline();
			list.addLast(item(parts.get(0), bound, 0));
			for (int i = 1; i < parts.size(); i++) {
				int first = bound.getNumberOfPages();
				new PDFMergerUtility().appendDocument(bound, opened.get(i));
				list.addLast(item(parts.get(i), bound, first));
			}
			bound.getDocumentCatalog().setDocumentOutline(list);
			PdfFacts.date(bound, made);
			PdfFacts.title(bound, title);
			bound.save(document);
			return document.toByteArray();
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The documents could not be bound into one", ex);
		}
		finally {
			opened.forEach(BoundPdf::close);
		}
	}

	private static PDOutlineItem item(Part part, PDDocument bound, int sheet) {
		PDPageFitWidthDestination destination = new PDPageFitWidthDestination();
		destination.setPage(bound.getPage(sheet));
		PDOutlineItem item = new PDOutlineItem();
		item.setTitle(part.title());
		item.setDestination(destination);
		return item;
	}

	private static void close(Closeable document) {
		try {
			document.close();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/**
	 * One of the documents.
	 *
	 * @param title what it is called in the list
	 * @param document the bytes of the PDF
	 */
	public record Part(String title, byte[] document) {
	}

}
