package rimebook.live;

import java.util.Locale;

/**
 * One line of a starting order as visitors see it.
 *
 * @param number the starting number
 * @param group the warm-up group
 * @param entry the entry's identity
 * @param ticket the digest that decided in the draw
 * @param digested the text it is the digest of, with the names as they were in the draw
 * @param mark how far the team is
 */
record Start(int number, int group, String entry, String team, String club, String ticket, String digested, Mark mark) {

	/** How far a team is. */
	enum Mark {

		TO_COME, ON_ICE, SKATED, WITHDRAWN, NOT_FINISHED, DISQUALIFIED;

		/** The key of its words. */
		public String key() {
			return "live.start." + name().toLowerCase(Locale.ROOT).replace('_', '-');
		}

		/** The class of its mark in the style sheet. */
		public String look() {
			return switch (this) {
				case TO_COME -> "";
				case ON_ICE -> "now";
				case SKATED -> "done";
				default -> "stop";
			};
		}

	}

	/** Tell whether it was on the ice. */
	boolean hasBeenCalled() {
		return this.mark == Mark.ON_ICE || this.mark == Mark.SKATED || this.mark == Mark.NOT_FINISHED;
	}

	/** Tell whether its number stays empty. */
	public boolean isGap() {
		return this.mark == Mark.WITHDRAWN;
	}

}
