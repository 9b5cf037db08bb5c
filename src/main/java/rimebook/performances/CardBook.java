package rimebook.performances;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.wording.Sentence;

/**
 * The cards of a performance, whichever way it is judged: what the run of a segment needs
 * to know of them. Who asks has read whose cards count, so that an act reads it once.
 */
public interface CardBook {

	/** Tell whether it holds the cards of events that are judged like this one. */
	boolean isFor(EventView event);

	/** Tell whether anything was sent for a performance. */
	boolean anySentFor(PerformanceId performance);

	/** The newest card of each seat. */
	Map<SeatId, SentCard> sentFor(PerformanceView performance);

	/**
	 * What is missing before the cards can be closed; empty when complete.
	 * @param seats whose cards are closed
	 */
	List<Sentence> missing(PerformanceView performance, List<SeatView> seats);

	/** What one seat's card lacks; empty when it is whole. */
	List<Sentence> missing(PerformanceView performance, SeatView seat);

	/** All that was sent and noted, whole or not, one sentence a card or list. */
	List<String> soFar(PerformanceView performance, CountingPanel panel);

	/** All that counts in words, for the record. */
	String inWords(PerformanceView performance, CountingPanel panel);

	/**
	 * The closed marks of some performances of a segment.
	 * @param panel whose cards count in it
	 * @param supposed what would stand there instead, {@code null} for nothing else
	 */
	Map<PerformanceId, ? extends ClosedMarks> closed(SegmentId segment, CountingPanel panel,
			List<PerformanceView> performances, Amendment.@Nullable SupposedChange<?> supposed);

	/**
	 * What two officials corrected on the cards of a seat, in all segments of its event.
	 */
	List<CorrectedCard> corrected(SeatId seat);

	/**
	 * Tell whether one card may be absent by itself; where a panel is never mixed, the
	 * whole seat is left out instead.
	 */
	boolean allowsAbsentCard();

	/** Refuse to close while something is missing. */
	default void requireComplete(PerformanceView performance, List<SeatView> seats) {
		List<Sentence> missing = missing(performance, seats);
		if (!missing.isEmpty()) {
			throw PerformanceRefusals.seatsMissing(missing);
		}
	}

	/**
	 * A seat's card as the referee sees it.
	 *
	 * @param words the marks in a few words
	 * @param sequence its version, from 1
	 */
	record SentCard(String words, int sequence, Instant receivedAt) {
	}

	/**
	 * A closed card of a seat that two officials corrected.
	 *
	 * @param id the identity of the version that counts since
	 * @param before what the judge gave, in words: both marks, or the lines that differ
	 * @param after what counts since
	 */
	record CorrectedCard(UUID id, PerformanceId performance, String before, String after) {

	}

	/**
	 * The service's word that it has a card: given only after the card is on disk.
	 *
	 * @param id the identity the device made
	 * @param sequence the version of the card that was taken
	 * @param receivedAt when it was first received, UTC; the same however often it is
	 * sent
	 */
	record Acknowledgement(UUID id, int sequence, Instant receivedAt) {
	}

}
