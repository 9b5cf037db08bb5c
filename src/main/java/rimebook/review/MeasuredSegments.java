package rimebook.review;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;

import rimebook.competition.Cancellations;
import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.panels.SeatView;
import rimebook.performances.CountingPanel;
import rimebook.performances.CountingPanels;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;

/** Reads the published marks of segments and who gave them. */
@Component
class MeasuredSegments {

	private final Competitions competitions;

	private final Cancellations cancellations;

	private final Standings standings;

	private final CountingPanels panels;

	MeasuredSegments(Competitions competitions, Cancellations cancellations, Standings standings,
			CountingPanels panels) {
		this.competitions = competitions;
		this.cancellations = cancellations;
		this.standings = standings;
		this.panels = panels;
	}

	/** Those of an event now, in the order of its segments. */
	List<MeasuredSegment> of(EventView event) {
		return this.standings.latest(event.id()).map((combined) -> of(event, combined)).orElse(List.of());
	}

	/**
	 * Those that a version of the event's standing combined, as they were then: what is
	 * read of a version never changes.
	 */
	List<MeasuredSegment> of(EventView event, ResultVersion combined) {
		return event.segments()
			.stream()
			.filter((segment) -> this.cancellations.tookPlace(segment, combined.publishedAt()))
			.flatMap((segment) -> this.standings.asOf(segment.id(), combined.publishedAt())
				.map((version) -> measured(event, segment, version))
				.stream())
			.toList();
	}

	/** Those of a whole competition now, event by event. */
	List<MeasuredSegment> of(CompetitionId competition) {
		return this.competitions.events(competition)
			.stream()
			.filter((event) -> !event.isCancelled())
			.flatMap((event) -> of(event).stream())
			.toList();
	}

	/** The same as they were at a moment. */
	List<MeasuredSegment> of(CompetitionId competition, Instant moment) {
		return this.competitions.events(competition)
			.stream()
			.filter((event) -> this.cancellations.tookPlace(event, moment))
			.flatMap((event) -> this.standings.asOf(event.id(), moment)
				.map((combined) -> of(event, combined))
				.stream()
				.flatMap(List::stream))
			.toList();
	}

	private MeasuredSegment measured(EventView event, SegmentView segment, ResultVersion version) {
		CountingPanel panel = this.panels.of(event, segment.id()).asOf(version.publishedAt());
		Map<Integer, SeatView> seats = panel.judges()
			.stream()
			.collect(Collectors.toMap(SeatView::number, Function.identity()));
		Standing standing = version.standing();
		return new MeasuredSegment(event, segment, version,
				standing.judgeNumbers().stream().map((number) -> judge(number, seats, panel, standing)).toList(),
				PublishedMarks.of(standing));
	}

	private static ReviewedJudge judge(int number, Map<Integer, SeatView> seats, CountingPanel panel,
			Standing standing) {
		Optional<SeatView> seat = Optional.ofNullable(seats.get(number));
		Optional<SeatView> counting = seat.flatMap(panel::counting);
		return new ReviewedJudge(number, counting.map((one) -> name(one, standing)).orElse(""),
				counting.isPresent() && !counting.equals(seat));
	}

	/** As it was in that version: a seat may have somebody else in the next segment. */
	private static String name(SeatView seat, Standing standing) {
		return Objects.requireNonNullElse(standing.officials(), List.<Standing.Official>of())
			.stream()
			.filter((official) -> official.seat().equals(seat.spoken()))
			.map(Standing.Official::name)
			.findFirst()
			.orElse("");
	}

}
