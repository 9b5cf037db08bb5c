package rimebook.documents;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.archive.ArchivedDocument;
import rimebook.archive.ArchivedDocuments;
import rimebook.archive.Variant;
import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;

/**
 * Adds to the archive of a competition what is printed of it, in a folder for each event.
 * The public one has starting orders and results without the names of officials; what
 * people wrote to each other stays out. Each is made of the data as they are when it is
 * its turn; what shows a version is of the version that there was at the beginning.
 */
@Component
class ArchivedSheets implements ArchivedDocuments {

	private static final Set<DocumentKind> OPEN = EnumSet.of(DocumentKind.STARTING_ORDER, DocumentKind.SEGMENT_RESULT,
			DocumentKind.JUDGES_DETAIL, DocumentKind.FINAL_RESULT, DocumentKind.MEDALS, DocumentKind.CERTIFICATES,
			DocumentKind.TIMETABLE);

	private final Competitions competitions;

	private final Documents documents;

	ArchivedSheets(Competitions competitions, Documents documents) {
		this.competitions = competitions;
		this.documents = documents;
	}

	@Override
	public List<ArchivedDocument> of(CompetitionId competition, Variant variant) {
		return this.competitions.events(competition).stream().flatMap((event) -> of(event, variant)).toList();
	}

	private Stream<ArchivedDocument> of(EventView event, Variant variant) {
		boolean open = variant == Variant.PUBLIC;
		return this.documents.offered(event)
			.stream()
			.filter((ref) -> !open || OPEN.contains(ref.kind()))
			.map((ref) -> new ArchivedDocument(event.slug() + "/" + name(event, ref),
					() -> this.documents.keep(ref, open)));
	}

	private static String name(EventView event, DocumentRef ref) {
		String segment = event.segments()
			.stream()
			.filter((one) -> one.id().value().equals(ref.subject()))
			.map(SegmentView::slug)
			.findFirst()
			.orElse("");
		return Documents.fileName(ref.kind(), segment.isEmpty() ? event.slug() : event.slug() + "-" + segment,
				ref.version());
	}

}
