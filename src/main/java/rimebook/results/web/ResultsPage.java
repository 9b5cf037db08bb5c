package rimebook.results.web;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.results.Standings;
import rimebook.tabulation.Hundredths;

/**
 * What the results desk shows of a segment.
 *
 * @param result where the result stands, {@code null} before the segment was opened
 * @param history what was published of it so far
 * @param reopened the performance whose closed cards were opened again, or {@code null}
 */
record ResultsPage(CompetitionView competition, EventView event, SegmentView segment,
		@Nullable SegmentResultView result, History history, @Nullable PerformanceView reopened) {

	/** The newest standing, {@code null} before the first cards were closed. */
	public @Nullable ResultVersion latest() {
		return this.history.versions().isEmpty() ? null : this.history.versions().get(0);
	}

	/** The moment as the rink's clock showed it. */
	public @Nullable ZonedDateTime atRink(@Nullable Instant moment) {
		ZoneId zone = this.competition.zone();
		return (moment != null) ? moment.atZone(zone) : null;
	}

	/** The newest posting, {@code null} before the first. */
	public SegmentResultView.@Nullable Posting posting() {
		List<SegmentResultView.Posting> postings = this.history.postings();
		return postings.isEmpty() ? null : postings.get(postings.size() - 1);
	}

	/** Why the segment does not take place; empty if it does. */
	public String cancelled() {
		return this.event.whyCancelled(this.segment.id());
	}

	/** A mark in hundredths as people write it. */
	public String mark(int hundredths) {
		return Hundredths.decimal(hundredths);
	}

	/** Points in hundredths, always with two decimals. */
	public String points(int hundredths) {
		return BigDecimal.valueOf(hundredths, 2).toPlainString();
	}

	/**
	 * What was published of a segment so far.
	 *
	 * @param versions every version, newest first
	 * @param postings every posting of the result, oldest first
	 * @param corrections what was corrected, with the places that moved by it
	 */
	record History(List<ResultVersion> versions, List<SegmentResultView.Posting> postings,
			List<Standings.CorrectedVersion> corrections) {
	}

	/** Gathers the page. */
	@Component("resultsPageSource")
	static class Source {

		private final Competitions competitions;

		private final Standings standings;

		private final SegmentRun run;

		Source(Competitions competitions, Standings standings, SegmentRun run) {
			this.competitions = competitions;
			this.standings = standings;
			this.run = run;
		}

		ResultsPage of(SegmentId id) {
			EventView event = this.competitions.eventOf(id);
			History history = new History(this.standings.versions(id), this.standings.postings(id),
					this.standings.corrections(id, Integer.MAX_VALUE));
			return new ResultsPage(this.competitions.competition(event.competition()), event, event.segment(id),
					this.standings.result(id).orElse(null), history, reopened(id));
		}

		private @Nullable PerformanceView reopened(SegmentId id) {
			return this.run.performances(id)
				.stream()
				.filter((performance) -> performance.status() == PerformanceStatus.REOPENED)
				.findFirst()
				.orElse(null);
		}

	}

}
