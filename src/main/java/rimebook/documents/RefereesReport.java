package rimebook.documents;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
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
import rimebook.panels.Panels;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.Reskates;
import rimebook.performances.SegmentRun;
import rimebook.protests.Protests;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.wording.Sentence;

/** What is known of a segment when the referee sits down to report of it. */
@Component
class RefereesReport implements DocumentSource {

	private final Subjects subjects;

	private final SegmentFacts facts;

	private final AsOfNow now;

	RefereesReport(Subjects subjects, SegmentFacts facts, AsOfNow now) {
		this.subjects = subjects;
		this.facts = facts;
		this.now = now;
	}

	@Override
	public DocumentKind kind() {
		return DocumentKind.REFEREES_REPORT;
	}

	@Override
	public List<DocumentRef> offered(EventView event) {
		return event.segments()
			.stream()
			.map(SegmentView::id)
			.filter(this.facts::hasBegun)
			.map((segment) -> DocumentRef.of(kind(), segment, 0))
			.toList();
	}

	@Override
	public DocumentContent read(DocumentRef ref) {
		DocumentContent.Subject at = this.subjects.of(ref.segment());
		return this.now.of(at, this.facts.of(at.event(), ref.segment()), this.facts.things(at.event(), ref.segment()));
	}

	/** Gathers what happened in a segment from those who know. */
	@Component
	static class SegmentFacts {

		private final SegmentRun run;

		private final Reskates reskates;

		private final Standings standings;

		private final Protests protests;

		private final Entries entries;

		private final Panels panels;

		SegmentFacts(SegmentRun run, Reskates reskates, Standings standings, Protests protests, Entries entries,
				Panels panels) {
			this.run = run;
			this.reskates = reskates;
			this.standings = standings;
			this.protests = protests;
			this.entries = entries;
			this.panels = panels;
		}

		boolean hasBegun(SegmentId segment) {
			return this.run.performances(segment).stream().anyMatch((one) -> one.turn().calledAt() != null);
		}

		Report of(EventView event, SegmentId segment) {
			Map<EntryId, String> teams = this.entries.ofEvent(event.id())
				.stream()
				.collect(Collectors.toMap(EntryView::id, (entry) -> entry.team().name()));
			List<PerformanceView> performances = this.run.performances(segment);
			Standing standing = this.standings.latest(segment).map(ResultVersion::standing).orElse(null);
			List<FieldSheets.Official> officials = FieldSheets.Official.of(this.panels.seated(event));
			return new Report(performances.stream().map((one) -> Skate.of(one, teams)).toList(),
					this.reskates.ofSegment(segment)
						.stream()
						.map((one) -> new Again(one.startNumber(), teams.getOrDefault(one.entry(), ""), one.reason()))
						.toList(),
					(standing != null) ? standing.panelNotes() : List.of(), officials,
					this.standings.corrections(segment, Integer.MAX_VALUE).size(),
					this.protests.ofSegment(segment).size());
		}

		/** What is told of: performances, protests, the panel. */
		Stream<UUID> things(EventView event, SegmentId segment) {
			return Stream
				.of(this.run.performances(segment).stream().map((one) -> one.id().value()),
						this.protests.ofSegment(segment).stream().map((one) -> one.id().value()),
						FieldSheets.Official.things(this.panels.seated(event)))
				.flatMap(Function.identity());
		}

	}

	/**
	 * The facts.
	 *
	 * @param skates in starting order
	 * @param again skates that were set aside and skated once more
	 * @param panelNotes how the panel differed from the one drawn
	 */
	record Report(List<Skate> skates, List<Again> again, List<Sentence> panelNotes,
			List<FieldSheets.Official> officials, int corrections, int protests) {

		/** When the first team was called, UTC; {@code null} before that. */
		public @Nullable Instant begun() {
			return this.skates.stream()
				.map(Skate::called)
				.filter(Objects::nonNull)
				.min(Instant::compareTo)
				.orElse(null);
		}

		/** When the last cards were closed, UTC; {@code null} before that. */
		public @Nullable Instant ended() {
			return this.skates.stream()
				.map(Skate::closed)
				.filter(Objects::nonNull)
				.max(Instant::compareTo)
				.orElse(null);
		}

		/** Those of which more is to be said than that they skated. */
		public List<Skate> unusual() {
			return this.skates.stream().filter(Skate::isUnusual).toList();
		}

	}

	/** One performance. */
	record Skate(int number, String team, PerformanceStatus status, String reason, String callReason,
			@Nullable Instant called, @Nullable Instant closed) {

		static Skate of(PerformanceView performance, Map<EntryId, String> teams) {
			return new Skate(performance.startNumber(), teams.getOrDefault(performance.entry(), ""),
					performance.status(), performance.course().statusReason(), performance.turn().callReason(),
					performance.turn().calledAt(), performance.course().closedAt());
		}

		boolean isUnusual() {
			return this.status != PerformanceStatus.CLOSED || !this.reason.isEmpty() || !this.callReason.isEmpty();
		}

	}

	/** A skate that did not count. */
	record Again(int number, String team, String reason) {
	}

}
