package rimebook.tablets;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;

/** Finds which segment a seat judges now, and what happens in it. */
@Component
class SeatsSegments {

	private final Panels panels;

	private final Competitions competitions;

	private final PerformanceRegister performances;

	SeatsSegments(Panels panels, Competitions competitions, PerformanceRegister performances) {
		this.panels = panels;
		this.competitions = competitions;
		this.performances = performances;
	}

	SeatView seat(SeatId id) {
		return this.panels.seat(id);
	}

	EventView event(SeatView seat) {
		return this.competitions.event(seat.event());
	}

	/** The last segment of the event that was opened. */
	Optional<SegmentView> underWay(EventView event) {
		return event.segments()
			.stream()
			.filter((segment) -> this.performances.isOpened(segment.id()))
			.reduce((earlier, later) -> later);
	}

	List<PerformanceView> performances(SegmentView segment) {
		return this.performances.ofSegment(segment.id());
	}

	/** Those for which no card is asked any more: ended without marks, or set aside. */
	List<PerformanceId> ended(SegmentView segment, List<PerformanceView> all) {
		Stream<PerformanceId> withoutMarks = all.stream()
			.filter((performance) -> performance.status().isEndedWithoutMarks())
			.map(PerformanceView::id);
		return Stream.concat(withoutMarks, this.performances.setAside(segment.id()).stream()).toList();
	}

}
