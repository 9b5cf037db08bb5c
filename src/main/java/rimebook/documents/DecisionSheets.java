package rimebook.documents;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.rulings.QuestionView;
import rimebook.rulings.Rulings;

/** What is printed of decisions: rulings, corrections, protests. */
final class DecisionSheets {

	private DecisionSheets() {
	}

	/** The questions of an event that the referee has ruled on. */
	@Component
	static class RulingList implements DocumentSource {

		private final Subjects subjects;

		private final Rulings rulings;

		private final Entries entries;

		private final AsOfNow now;

		RulingList(Subjects subjects, Rulings rulings, Entries entries, AsOfNow now) {
			this.subjects = subjects;
			this.rulings = rulings;
			this.entries = entries;
			this.now = now;
		}

		@Override
		public DocumentKind kind() {
			return DocumentKind.RULINGS;
		}

		@Override
		public List<DocumentRef> offered(EventView event) {
			return ruled(event).isEmpty() ? List.of() : List.of(DocumentRef.of(kind(), event.id(), 0));
		}

		@Override
		public DocumentContent read(DocumentRef ref) {
			DocumentContent.Subject at = this.subjects.of(ref.event());
			List<QuestionView> ruled = ruled(at.event());
			return this.now.of(at, new Ruled(ruled), ruled.stream()
				.flatMap((question) -> Stream.of(question.id().value(), question.party().entry().value())));
		}

		private List<QuestionView> ruled(EventView event) {
			List<EntryId> entered = this.entries.ofEvent(event.id()).stream().map(EntryView::id).toList();
			return this.rulings.ofCompetition(event.competition())
				.stream()
				.filter((question) -> !question.isOpen() && entered.contains(question.party().entry()))
				.toList();
		}

	}

	/** What two officials corrected in a segment. */
	@Component
	static class CorrectionNotice implements DocumentSource {

		private final Subjects subjects;

		private final PublishedVersions versions;

		private final Standings standings;

		CorrectionNotice(Subjects subjects, PublishedVersions versions, Standings standings) {
			this.subjects = subjects;
			this.versions = versions;
			this.standings = standings;
		}

		@Override
		public DocumentKind kind() {
			return DocumentKind.CORRECTION_NOTICE;
		}

		@Override
		public List<DocumentRef> offered(EventView event) {
			return event.segments()
				.stream()
				.map(SegmentView::id)
				.flatMap((segment) -> this.standings.latest(segment).stream())
				.filter((version) -> !corrections(version).isEmpty())
				.map((version) -> new DocumentRef(kind(), version.scopeId(), version.number()))
				.toList();
		}

		@Override
		public DocumentContent read(DocumentRef ref) {
			ResultVersion version = this.versions.of(ref);
			return this.versions.shown(this.subjects.of(ref.segment()), version, new Corrected(corrections(version)));
		}

		private List<Standings.CorrectedVersion> corrections(ResultVersion version) {
			return this.standings.corrections(new SegmentId(version.scopeId()), version.number());
		}

	}

	/** The protests about a segment. */
	@Component
	static class ProtestDecisions implements DocumentSource {

		private final Subjects subjects;

		private final Protests protests;

		private final Entries entries;

		private final AsOfNow now;

		ProtestDecisions(Subjects subjects, Protests protests, Entries entries, AsOfNow now) {
			this.subjects = subjects;
			this.protests = protests;
			this.entries = entries;
			this.now = now;
		}

		@Override
		public DocumentKind kind() {
			return DocumentKind.PROTEST_DECISIONS;
		}

		@Override
		public List<DocumentRef> offered(EventView event) {
			return event.segments()
				.stream()
				.map(SegmentView::id)
				.filter((segment) -> !this.protests.ofSegment(segment).isEmpty())
				.map((segment) -> DocumentRef.of(kind(), segment, 0))
				.toList();
		}

		@Override
		public DocumentContent read(DocumentRef ref) {
			DocumentContent.Subject at = this.subjects.of(ref.segment());
			Map<EntryId, String> teams = this.entries.ofEvent(at.event().id())
				.stream()
				.collect(Collectors.toMap(EntryView::id, (entry) -> entry.team().name()));
			List<ProtestView> protests = this.protests.ofSegment(ref.segment());
			return this.now.of(at,
					new Protested(protests.stream()
						.map((protest) -> new Heard(protest, teams.get(protest.claim().entry())))
						.toList()),
					protests.stream().map((protest) -> protest.id().value()));
		}

	}

	record Ruled(List<QuestionView> questions) {
	}

	record Corrected(List<Standings.CorrectedVersion> corrections) {
	}

	record Protested(List<Heard> protests) {
	}

	/**
	 * @param team {@code null} where its entry is no longer there
	 */
	record Heard(ProtestView protest, @Nullable String team) {
	}

}
