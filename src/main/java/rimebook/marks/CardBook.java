package rimebook.marks;

import java.util.List;
import java.util.Map;

import rimebook.panels.SeatId;
import rimebook.panels.SeatView;

/**
 * The cards of a performance, whichever way it is judged: what the run of a segment needs
 * to know of them.
 */
interface CardBook {

	/** Tell whether anything was sent for a performance. */
	boolean anySentFor(PerformanceId performance);

	/** The newest card of each seat. */
	Map<SeatId, SentCard> sentFor(Performance performance);

	/** What is missing before the cards can be closed, in words; empty when complete. */
	List<String> missing(Performance performance);

	/** What one seat's card lacks, in words; empty when it is whole. */
	List<String> missing(Performance performance, SeatView seat);

	/** What is missing although those seats are absent. */
	List<String> missingWithout(Performance performance, List<SeatView> absent);

	/** All that was sent and noted, whole or not, one sentence a card or list. */
	List<String> soFar(Performance performance);

	/** All that counts in words, for the record. */
	String inWords(Performance performance);

	/** Refuse to close while something is missing. */
	default void requireComplete(Performance performance) {
		List<String> missing = missing(performance);
		if (!missing.isEmpty()) {
			throw PerformanceRefusals.seatsMissing(missing);
		}
	}

}
