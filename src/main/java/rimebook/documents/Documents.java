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
import rimebook.competition.EventView;
import rimebook.pages.BoundPdf;
import rimebook.pages.PdfPage;
import rimebook.published.Standing;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Figures;

/** Lays out everything that is printed of a competition. */
@Service
public class Documents {

	private final DocumentReading reading;

	private final PdfPage paper;

	private final ComparisonAddresses comparisons;

	private final PaperAnchors anchors;

	private final MessageSource messages;

	Documents(DocumentReading reading, PdfPage paper, ComparisonAddresses comparisons, PaperAnchors anchors,
			MessageSource messages) {
		this.reading = reading;
		this.paper = paper;
		this.comparisons = comparisons;
		this.anchors = anchors;
		this.messages = messages;
	}

	/** The documents that there are now for an event, in the order of their kinds. */
	public List<DocumentRef> offered(EventView event) {
		return this.reading.offered(event);
	}

	/**
	 * Lay out a document. One that shows a version is the same bytes each time, on the
	 * same paper and in the same language, whatever was changed since and wherever it is
	 * restored; but for who hands over on the sheet of a medal ceremony, which is
	 * arranged apart from any version.
	 * @throws NotFoundException if there is none
	 * @throws RuleViolationException if it cannot be printed yet
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
		String segment = content.at().names().segment();
		String title = segment.isEmpty() ? kind : kind + ", " + segment;
		return new Part(content.edition().since(), new BoundPdf.Part(title, lay(ref, content, size, language)));
	}

	private byte[] lay(DocumentRef ref, DocumentContent content, PaperSize size, Locale language) {
		Anchor anchor = this.anchors.of(ref, content.edition());
		this.anchors.note(content, anchor);
		return lay(new DocumentHead(ref, content, this.comparisons.of(ref, content), anchor), size, language);
	}

	private byte[] lay(DocumentHead head, PaperSize size, Locale language) {
		return this.paper.of("documents/" + head.ref().kind().word(), language, Map.of("head", head, "size", size.css(),
				"body", head.content().body(), "figures", new Figures(language)), head.since());
	}

	/**
	 * Lay out a document for an archive, on A4 and in English: the same bytes whenever it
	 * is made of the same data, wherever they are restored. What has no version is of the
	 * time of the newest line that tells of anything in it, and leads where the newest
	 * version of its event does.
	 * @param open whether it is for everybody, without the names of officials
	 */
	byte[] keep(DocumentRef ref, boolean open) {
		DocumentContent content = this.reading.read(ref);
		boolean published = content.edition().version() > 0;
		Anchor anchor = published ? this.anchors.of(ref, content.edition())
				: this.anchors.newestAbout(content.about()).orElse(null);
		DocumentContent dated = published ? content : content.since(since(anchor, content));
		return lay(new DocumentHead(ref, open ? dated.withoutPeople() : dated, this.comparisons.lasting(ref, dated),
				anchor), PaperSize.A4, Locale.ENGLISH);
	}

	/** What no line tells of has been so since the competition began. */
	private static Instant since(@Nullable Anchor anchor, DocumentContent content) {
		Standing.Venue venue = content.at().venue();
		return (anchor != null && anchor.writtenAt() != null) ? anchor.writtenAt()
				: venue.firstDay().atStartOfDay(venue.zone()).toInstant();
	}

	/**
	 * The fingerprint of what a document says now, or of the version it names; empty
	 * where there is no such document any more, or none that could ever be printed.
	 */
	public Optional<String> fingerprint(DocumentRef ref) {
		try {
			return Optional.of(this.reading.read(ref).edition().fingerprint());
		}
		catch (NotFoundException | RuleViolationException ex) {
			return Optional.empty();
		}
	}

	/**
	 * The version that has taken the place of the one that a document names, also where
	 * it is not to be printed yet; the named one where none has, 0 for what has no
	 * version.
	 */
	public int newestVersion(DocumentRef ref) {
		return (ref.version() > 0) ? Math.max(ref.version(), this.reading.newestVersion(ref)) : 0;
	}

	private static String fileName(DocumentRef ref, DocumentContent content) {
		int version = content.edition().version();
		return fileName(ref.kind(), content.at().slug(), version);
	}

	/** What a document is called as a file, such as {@code junior-medals-7.pdf}. */
	static String fileName(DocumentKind kind, String slug, int version) {
		return slug + "-" + kind.word() + ((version > 0) ? "-" + version : "") + ".pdf";
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
