package rimebook.stand;

import java.util.List;
import java.util.function.Predicate;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentPlace;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.performances.RunningOrder;

/** The referee's look at a segment: order, ice, panel. */
@Service
public class Stand {

	private final PerformanceRegister performances;

	private final Competitions competitions;

	private final StandRows rows;

	private final MarkedNow marked;

	Stand(PerformanceRegister performances, Competitions competitions, StandRows rows, MarkedNow marked) {
		this.performances = performances;
		this.competitions = competitions;
		this.rows = rows;
		this.marked = marked;
	}

	/** Return the segment as the referee sees it now. */
	@Transactional(readOnly = true)
	public StandView ofSegment(SegmentId id) {
		EventView event = this.competitions.eventOf(id);
		List<PerformanceView> all = this.performances.ofSegment(id);
		List<StandView.Row> order = all.stream().map(this.rows::of).toList();
		List<StandView.Now> taking = this.marked.of(all.stream().filter(PerformanceView::takesCards).toList());
		PerformanceView next = RunningOrder.next(order.stream().map(StandView.Row::performance).toList()).orElse(null);
		return new StandView(
				new SegmentPlace(this.competitions.competition(event.competition()), event, event.segment(id)), order,
				new StandView.Ice(first(taking, PerformanceView::isOnIce),
						order.stream().filter((row) -> row.performance().equals(next)).findFirst().orElse(null),
						first(taking, PerformanceView::isReopened)));
	}

	/**
	 * Return a performance whose cards are closed, for a card that is added from paper;
	 * {@code null} for one that takes cards, or has none.
	 */
	@Transactional(readOnly = true)
	public StandView.@Nullable Now closed(SegmentId segment, String performance) {
		return first(this.marked.of(this.performances.ofSegment(segment)
			.stream()
			.filter((one) -> one.id().toString().equals(performance) && one.hasClosedCards() && !one.takesCards())
			.toList()), (one) -> true);
	}

	private static StandView.@Nullable Now first(List<StandView.Now> some, Predicate<PerformanceView> wanted) {
		return some.stream().filter((one) -> wanted.test(one.row().performance())).findFirst().orElse(null);
	}

}
