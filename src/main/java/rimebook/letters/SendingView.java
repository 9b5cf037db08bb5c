package rimebook.letters;

import java.time.Instant;
import java.util.Map;
import java.util.UUID;

import rimebook.competition.CompetitionId;

/**
 * That somebody had letters sent or printed.
 *
 * @param states how many letters are how far
 */
public record SendingView(UUID id, CompetitionId competition, LetterKind kind, Way way, Made made,
		Map<LetterState, Integer> states) {

	public SendingView {
		states = Map.copyOf(states);
	}

	/** How many are that far. */
	public int count(LetterState state) {
		return this.states.getOrDefault(state, 0);
	}

	/** Tell whether some of it can still be taken back. */
	public boolean isWaiting() {
		return count(LetterState.WAITING) > 0;
	}

	/** How letters go. */
	public enum Way {

		/** By electronic mail. */
		MAIL,

		/** On paper. */
		PAPER

	}

	/**
	 * Who did it and when.
	 *
	 * @param letters how many there were
	 */
	public record Made(int letters, String by, Instant at) {
	}

}
