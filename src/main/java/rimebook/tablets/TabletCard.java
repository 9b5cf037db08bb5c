package rimebook.tablets;

import java.util.List;
import java.util.Map;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceView;
import rimebook.points.PointsTasks;
import rimebook.tabulation.PlacementRules;

/**
 * The card of a way of judging as tablets show it. A way that has none is judged on
 * paper, and the tablets of its seats say so. What a card sends comes to a controller of
 * its own below {@code /api/judge}.
 */
public interface TabletCard {

	/** Tell whether it is the card of events that are judged like this one. */
	boolean isFor(EventView event);

	/**
	 * The template of its page; the model has the {@code seat}, the {@code event}, the
	 * {@code zone} of the rink and the {@code remarkKinds}.
	 */
	String page();

	/**
	 * What a seat's table has besides what it has in every way of judging.
	 * @param all the performances of the segment under way
	 */
	default Given given(SeatId seat, EventView event, SegmentView segment, List<PerformanceView> all) {
		return Given.nothing(segment);
	}

	/**
	 * What a way of judging adds to a seat's table.
	 *
	 * @param secondLook which of two equal totals is better on this judge's own card
	 * @param cards the seat's cards of two marks, in the order skated
	 * @param tasks what the seat has to give in points judging the performances for which
	 * cards are taken now
	 */
	record Given(PlacementRules.CardTieBreak secondLook, List<JudgeTable.OwnCard> cards,
			Map<PerformanceId, PointsTasks.PointsTask> tasks) {

		public Given {
			cards = List.copyOf(cards);
			tasks = Map.copyOf(tasks);
		}

		static Given nothing(SegmentView segment) {
			return new Given(segment.kind().cardTieBreak(), List.of(), Map.of());
		}

	}

}
