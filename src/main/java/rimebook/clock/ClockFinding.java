package rimebook.clock;

import java.time.Instant;

/**
 * What the clock shows that may cost a team something. It only points it out: the
 * rulebook in force and the referee decide.
 *
 * @param seconds of {@link Fault#LATE_START} how long after the call, of a time how far
 * outside the window, of an interruption how long
 * @param since when it was known, UTC
 */
public record ClockFinding(Fault fault, int seconds, Instant since) {

	private static final int HALF_A_MINUTE = 30;

	/** What is at fault. */
	public enum Fault {

		/** The first movement came more than a minute after the call. */
		LATE_START,

		/** The team was interrupted by its own cause for more than ten seconds. */
		INTERRUPTION,

		/** The programme was longer than its window. */
		TOO_LONG,

		/** The programme was shorter than its window. */
		TOO_SHORT

	}

	/**
	 * Tell whether a touch of the clock is more likely at fault than the team: more than
	 * half a minute beyond what costs nothing (common practice).
	 */
	public boolean isDoubtful() {
		return beyond() > HALF_A_MINUTE;
	}

	private int beyond() {
		return switch (this.fault) {
			case LATE_START -> this.seconds - ClockView.START_WITHIN;
			case INTERRUPTION -> this.seconds - ClockView.UNCOUNTED_PAUSE;
			case TOO_LONG, TOO_SHORT -> this.seconds;
		};
	}

	/**
	 * In how many steps of that length the seconds fall, a begun one counting whole.
	 * @param step seconds, at least 1
	 */
	public int steps(int step) {
		return (this.seconds + step - 1) / step;
	}

}
