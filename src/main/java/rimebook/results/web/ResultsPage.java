package rimebook.results.web;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

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
 * @param latest the newest standing, {@code null} before the first cards were closed
 * @param versions every version, newest first
 * @param postings every posting of the result, oldest first
 * @param corrections what was corrected, with the places that moved by it
 * @param reopened the performance whose closed cards were opened again, or {@code null}
 */
record ResultsPage(CompetitionView competition, EventView event, SegmentView segment,
		@Nullable SegmentResultView result, @Nullable ResultVersion latest, List<ResultVersion> versions,
		List<SegmentResultView.Posting> postings, List<Standings.CorrectedVersion> corrections,
		@Nullable PerformanceView reopened) {

	/** The moment as the rink's clock showed it. */
	public @Nullable ZonedDateTime atRink(@Nullable Instant moment) {
		ZoneId zone = this.competition.zone();
		return (moment != null) ? moment.atZone(zone) : null;
	}

	/** The newest posting, {@code null} before the first. */
	public SegmentResultView.@Nullable Posting posting() {
		return this.postings.isEmpty() ? null : this.postings.get(this.postings.size() - 1);
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
			List<ResultVersion> versions = this.standings.versions(id);
			Optional<SegmentResultView> result = this.standings.result(id);
			return new ResultsPage(this.competitions.competition(event.competition()), event, event.segment(id),
					result.orElse(null), versions.isEmpty() ? null : versions.get(0), versions,
					this.standings.postings(id), this.standings.corrections(id, Integer.MAX_VALUE), reopened(id));
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
