package rimebook.live;

import java.util.Locale;

import rimebook.published.Standing;

/**
 * How a team's place moved since the version before.
 *
 * @param kind which way
 * @param steps how many places
 */
record Change(Kind kind, int steps) {

	/** Which way a team moved. */
	enum Kind {

		UP("▲"), DOWN("▼"), SAME("="), NEW("+"), NONE("–");

		private final String sign;

		Kind(String sign) {
			this.sign = sign;
		}

		public String sign() {
			return this.sign;
		}

	}

	static Change of(Standing.Row row) {
		Integer now = row.place();
		Integer before = row.previousPlace();
		if (now == null) {
			return new Change(Kind.NONE, 0);
		}
		return (before == null) ? new Change(Kind.NEW, 0) : of(before - now);
	}

	private static Change of(int steps) {
		return new Change((steps > 0) ? Kind.UP : (steps < 0) ? Kind.DOWN : Kind.SAME, Math.abs(steps));
	}

	/** The key of its words. */
	public String key() {
		return "live.change." + this.kind.name().toLowerCase(Locale.ROOT);
	}

}
