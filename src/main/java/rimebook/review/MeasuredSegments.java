package rimebook.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.panels.OfficialView;
import rimebook.panels.SeatView;
import rimebook.performances.CountingPanel;
import rimebook.performances.CountingPanels;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;

/** Reads the newest published marks of segments and who gave them. */
@Component
class MeasuredSegments {

	private final Competitions competitions;

	private final Standings standings;

	private final CountingPanels panels;

	MeasuredSegments(Competitions competitions, Standings standings, CountingPanels panels) {
		this.competitions = competitions;
		this.standings = standings;
		this.panels = panels;
	}

	/** The events of a competition that take place, by their order. */
	List<EventView> events(CompetitionId competition) {
		return this.competitions.events(competition).stream().filter((event) -> !event.isCancelled()).toList();
	}

	/** The segments of an event that take place and have a standing. */
	List<MeasuredSegment> of(EventView event) {
		return event.segments()
			.stream()
			.filter((segment) -> !segment.isCancelled())
			.flatMap((segment) -> this.standings.latest(segment.id())
				.map((version) -> measured(event, segment, version))
				.stream())
			.toList();
	}

	private MeasuredSegment measured(EventView event, SegmentView segment, ResultVersion version) {
		CountingPanel panel = this.panels.of(event, segment.id());
		Map<Integer, SeatView> seats = panel.judges()
			.stream()
			.collect(Collectors.toMap(SeatView::number, Function.identity()));
		Standing standing = version.standing();
		return new MeasuredSegment(event, segment, version,
				standing.judgeNumbers().stream().map((number) -> judge(number, seats, panel)).toList(),
				PublishedMarks.of(standing));
	}

	private static ReviewedJudge judge(int number, Map<Integer, SeatView> seats, CountingPanel panel) {
		Optional<SeatView> seat = Optional.ofNullable(seats.get(number));
		Optional<SeatView> counting = seat.flatMap(panel::counting);
		String name = counting.map(SeatView::official).map(OfficialView::name).orElse("");
		return new ReviewedJudge(number, name, counting.isPresent() && !counting.equals(seat));
	}

}
