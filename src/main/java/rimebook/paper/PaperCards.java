package rimebook.paper;

import java.util.List;
import java.util.Map;

import rimebook.competition.EventView;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;

/** The cards of a performance as they stand on paper, for one way of judging. */
public interface PaperCards {

	/** Tell whether it reads the paper cards of events that are judged like this one. */
	boolean isFor(EventView event);

	/** The seats that have a card, in order. */
	List<SeatView> seats(PerformanceView performance);

	/** The lines that have to be filled in now; none while they are not known. */
	List<CardLine> lines(PerformanceView performance);

	/** The newest card that was received of each seat. */
	Map<SeatId, HeldCard> held(PerformanceView performance);

	/**
	 * Refuse a card that is not whole.
	 * @throws rimebook.shared.RuleViolationException naming the line
	 */
	void require(PerformanceView performance, KeyedCard card);

	/** Keep a card that was keyed in as the seat's next version. */
	void keep(PerformanceView performance, SeatId seat, int sequence, KeyedCard card);

	/** Write the marks of a card in one line, for the record. */
	String words(PerformanceView performance, KeyedCard card);

}
