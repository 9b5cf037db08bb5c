package rimebook.performances;

import org.jspecify.annotations.Nullable;

import rimebook.panels.SeatId;
import rimebook.wording.Sentence;

/**
 * What stands in one place of a card, of a list, or of how a team came through, when two
 * officials correct it: both what was there and what shall be are one of these. Each way
 * of judging has its own; what they share is that they can be said in words and kept as
 * JSON (by the components of the record), which is read back for as long as the
 * competition is kept.
 */
public interface Amendment {

	/**
	 * The place in words: "element 3", "Composition"; {@link Sentence#NONE} for a card as
	 * a whole.
	 */
	Sentence spokenPlace();

	/** What stands there, in words. */
	Sentence spoken();

	/** The place in English, as on the record; empty for a card as a whole. */
	default String place() {
		return spokenPlace().english();
	}

	/** What stands there, in English, as on the record. */
	default String words() {
		return spoken().english();
	}

	/**
	 * The list that the place is on, in words; empty for a card, or where there is none.
	 */
	default String list() {
		return "";
	}

	/**
	 * Tell whether the technical panel has to agree, whose members are then named in the
	 * reason.
	 */
	default boolean isOfTechnicalPanel() {
		return false;
	}

	/** How long the reason may be, in characters. */
	default int longestReason() {
		return 2000;
	}

	/**
	 * Something else that would stand in one place of a closed performance: what a
	 * correction would bring is looked at before it is decided.
	 *
	 * @param seat whose card, {@code null} where it is no judge's
	 * @param amendment what would stand there, and where
	 */
	record SupposedChange<A extends Amendment>(PerformanceId performance, @Nullable SeatId seat, A amendment) {

		/** The seat of a place that is on a judge's card. */
		public SeatId judge() {
			if (this.seat == null) {
				throw new IllegalStateException("No seat is named for a card.");
			}
			return this.seat;
		}

	}

}
