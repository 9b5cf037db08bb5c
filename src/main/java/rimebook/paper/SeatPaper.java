package rimebook.paper;

import java.time.Instant;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.panels.SeatView;

/**
 * How far a seat's paper card has come, as one person may see it.
 *
 * @param said what was said of it
 * @param held the card that was received and counts, {@code null} while there is none
 * @param sight give it back when settling, so that nothing is overlooked
 */
public record SeatPaper(SeatView seat, Stage stage, Said said, PaperCards.@Nullable HeldCard held, Sight sight) {

	/** The card of a seat while nobody is on the ice. */
	public static SeatPaper untouched(SeatView seat) {
		return new SeatPaper(seat, Stage.MISSING, new Said(List.of(), false, List.of(), null), null, new Sight(0, 0));
	}

	/** What stands on the card that was received, {@code null} while there is none. */
	public PaperCards.@Nullable KeyedCard received() {
		return (this.held != null) ? this.held.marks() : null;
	}

	/** How far a card has come. */
	public enum Stage {

		/** Neither keyed nor received. */
		MISSING,

		/** Keyed by one person; somebody else has to key it too. */
		ONCE,

		/** What was keyed or sent differs; somebody settles it with the paper. */
		DIFFER,

		/** Received, and nothing that was keyed speaks against it. */
		RECEIVED

	}

	/**
	 * What one person, or the tablet, says is on the paper.
	 */
	public record Voice(Speaker by, PaperCards.KeyedCard marks, Instant at) {

		static Voice of(PaperState.Voice voice) {
			return new Voice(voice.by(), voice.marks(), voice.at());
		}

	}

	/**
	 * What there was when somebody looked.
	 *
	 * @param keyings how many keyings of this card
	 * @param card the version of the card that counted, 0 for none
	 */
	public record Sight(int keyings, int card) {
	}

	/** Tell whether this person's own keying is the one that waits for a second. */
	public boolean waitsForOthers() {
		return this.stage == Stage.ONCE && this.said.mine();
	}

	/** Tell whether the tablet's card is one of those that differ. */
	public boolean isAgainstTablet() {
		return this.stage == Stage.DIFFER && this.said.by().stream().anyMatch(Speaker::isTablet);
	}

	/**
	 * What was said of a card, as one person may see it.
	 *
	 * @param by who says what waits
	 * @param mine whether what waits, or a part of it, was keyed by this person
	 * @param voices what each of them says is on the paper; empty unless they differ, so
	 * that nobody sees what another keyed before keying it too
	 * @param own what this person keyed last, {@code null} for nothing
	 */
	public record Said(List<Speaker> by, boolean mine, List<Voice> voices, PaperCards.@Nullable KeyedCard own) {

		public Said {
			by = List.copyOf(by);
			voices = List.copyOf(voices);
		}

	}

}
