package rimebook.paper;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.panels.SeatId;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceView;

/** The cards of a performance as they stand on paper, for one way of judging. */
public interface PaperCards {

	/** Tell whether it reads the paper cards of events that are judged like this one. */
	boolean isFor(EventView event);

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

	/**
	 * The newest card that was received of a seat, whichever way the event is judged.
	 *
	 * @param upToDate whether it was given to what is judged now, and not to another
	 * element, or to one that was taken out since
	 */
	record HeldCard(KeyedCard marks, int sequence, CardOrigin origin, Instant receivedAt, boolean upToDate) {

		boolean isFromTablet() {
			return this.origin == CardOrigin.JUDGE;
		}

		/** Tell whether it stands as that card says. */
		boolean says(KeyedCard card) {
			return this.upToDate && card.agreesWith(this.marks);
		}

	}

	/**
	 * What stands on a paper card, line by line, whichever way the event is judged, so
	 * that two keyings of the same paper can be compared without knowing what they mean.
	 *
	 * @param lines by the key of their {@link CardLine}: a mark in hundredths, or a grade
	 */
	record KeyedCard(Map<String, Integer> lines) {

		public KeyedCard {
			lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
		}

		/** What stands in a line, {@code null} where nothing does. */
		public @Nullable Integer value(CardLine line) {
			return this.lines.get(line.key());
		}

		/**
		 * Tell whether every line of this card stands with the same value on the other.
		 */
		boolean agreesWith(KeyedCard other) {
			return other.lines.entrySet().containsAll(this.lines.entrySet());
		}

	}

	/**
	 * One line of a paper card that has to be filled in; each way of judging has its own.
	 */
	interface CardLine {

		/** What it is kept under. */
		String key();

		/** What may stand in it: a word for the texts beside it. */
		String kind();

		/** The element’s place in the programme, 0 where the line is about none. */
		int number();

		/** The element’s code or the component’s name; empty where the kind says all. */
		String name();

		/** The greatest grade, 0 where it is none. */
		int most();

		/** Write a value of this line as people do: "5.6", "+2", "7.25". */
		String words(int value);

		/**
		 * Read what was typed.
		 * @return the value, empty for what cannot stand in this line
		 */
		OptionalInt read(String typed);

	}

}
