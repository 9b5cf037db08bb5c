package rimebook.tablets;

import java.util.List;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.panels.SeatId;
import rimebook.performances.PerformanceView;
import rimebook.points.PointsTasks;

/** The card of grades and components, element by element as they are called. */
@Component
class PointsOnTablet implements TabletCard {

	private final PointsTasks tasks;

	PointsOnTablet(PointsTasks tasks) {
		this.tasks = tasks;
	}

	@Override
	public boolean isFor(EventView event) {
		return event.judging().method().isPoints();
	}

	@Override
	public String page() {
		return "tablets/card-points";
	}

	@Override
	public Given given(SeatId seat, EventView event, SegmentView segment, List<PerformanceView> all) {
		return new Given(segment.kind().cardTieBreak(), List.of(),
				all.stream()
					.filter(PerformanceView::takesCards)
					.collect(Collectors.toMap(PerformanceView::id, (performance) -> this.tasks.of(performance, seat))));
	}

}
