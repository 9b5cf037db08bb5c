package rimebook.documents;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Service;

import rimebook.audit.Anchor;
import rimebook.audit.RecordAnchors;
import rimebook.competition.EventView;
import rimebook.pages.BoundPdf;
import rimebook.pages.PdfPage;
import rimebook.shared.NotFoundException;
import rimebook.wording.Figures;

/** Lays out everything that is printed of a competition. */
@Service
public class Documents {

	private final DocumentReading reading;

	private final PdfPage paper;

	private final ComparisonAddresses comparisons;

	private final RecordAnchors record;

	private final MessageSource messages;

	Documents(DocumentReading reading, PdfPage paper, ComparisonAddresses comparisons, RecordAnchors record,
			MessageSource messages) {
		this.reading = reading;
		this.paper = paper;
		this.comparisons = comparisons;
		this.record = record;
		this.messages = messages;
	}

	/** The documents that there are now for an event, in the order of their kinds. */
	public List<DocumentRef> offered(EventView event) {
		return this.reading.offered(event);
	}

	/**
	 * Lay out a document. One that shows a version is the same bytes each time, on the
	 * same paper, in the same language and for the same address of this house.
	 * @throws NotFoundException if there is none
	 * @throws rimebook.shared.RuleViolationException if it cannot be printed yet
	 */
	public Printed print(DocumentRef ref, PaperSize size, Locale language) {
		DocumentContent content = this.reading.read(ref);
		return new Printed(fileName(ref, content), lay(ref, content, size, language));
	}

	/**
	 * Lay out everything of an event as one document, whose parts keep their own sheet
	 * numbers.
	 * @throws NotFoundException if there is nothing yet
	 */
	public Printed printAll(EventView event, PaperSize size, Locale language) {
		List<Part> parts = offered(event).stream().map((ref) -> part(ref, size, language)).toList();
		Instant newest = parts.stream()
			.map(Part::since)
			.max(Instant::compareTo)
			.orElseThrow(() -> NotFoundException.of("document", event.id()));
		String title = this.messages.getMessage("documents.all-of", new Object[] { event.name() }, language);
		return new Printed(event.slug() + ".pdf", BoundPdf.of(title, parts.stream().map(Part::bound).toList(), newest));
	}

	private Part part(DocumentRef ref, PaperSize size, Locale language) {
		DocumentContent content = this.reading.read(ref);
		String kind = this.messages.getMessage("documents.kind." + ref.kind().word(), null, language);
		String title = (content.at().segment() != null) ? kind + ", " + content.at().segment().name() : kind;
		return new Part(content.edition().since(), new BoundPdf.Part(title, lay(ref, content, size, language)));
	}

	private byte[] lay(DocumentRef ref, DocumentContent content, PaperSize size, Locale language) {
		DocumentHead head = new DocumentHead(ref, content, this.comparisons.of(ref, content.edition()),
				anchor(ref, content.edition()));
		return this.paper.of("documents/" + ref.kind().word(), language,
				Map.of("head", head, "size", size.css(), "body", content.body(), "figures", new Figures(language)),
				content.edition().since());
	}

	/** What is printed of the record: the line that tells of the version, or its end. */
	private @Nullable Anchor anchor(DocumentRef ref, DocumentContent.Edition edition) {
		return ((edition.version() > 0) ? this.record.ofVersion(ref.subject(), edition.version(), edition.fingerprint())
				: this.record.head())
			.orElse(null);
	}

	/**
	 * The fingerprint of what a document says now, or of the version it names; empty
	 * where there is no such document any more.
	 */
	public Optional<String> fingerprint(DocumentRef ref) {
		try {
			return Optional.of(this.reading.read(ref).edition().fingerprint());
		}
		catch (NotFoundException ex) {
			return Optional.empty();
		}
	}

	private static String fileName(DocumentRef ref, DocumentContent content) {
		int version = content.edition().version();
		return content.at().slug() + "-" + ref.kind().word() + ((version > 0) ? "-" + version : "") + ".pdf";
	}

	/**
	 * A document as a file.
	 *
	 * @param name such as {@code junior-free-segment-result-7.pdf}
	 * @param bytes the PDF
	 */
	public record Printed(String name, byte[] bytes) {
	}

	private record Part(Instant since, BoundPdf.Part bound) {
	}

}
