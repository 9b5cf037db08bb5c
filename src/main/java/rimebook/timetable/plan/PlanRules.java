package rimebook.timetable.plan;

/**
 * What the times of a plan are made from, all in seconds. Where each usual value comes
 * from stands beside it on the page (message {@code timetable.rules.<name>.source}).
 *
 * @param team how long the parts of a team's time take beside its programme
 * @param ice when the ice is resurfaced
 * @param care what is warned about
 */
public record PlanRules(TeamTime team, IceCare ice, Distances care) {

	/**
	 * The usual values. Warm-up and the minute from the announcement to the starting
	 * position: rules for synchronized skating of about 2011 (at least one minute on the
	 * ice before, then one minute from the announcement); all others common practice.
	 */
	public static final PlanRules USUAL = new PlanRules(new TeamTime(WarmUp.TEAM, 60, 60, 30, 60, 120),
			new IceCare(3600, 900, true), new Distances(3600, 1200, 1));

	/** Who warms up together. */
	public enum WarmUp {

		/** Each team by itself, right before its programme. */
		TEAM,

		/** The teams of a warm-up group together, before the first of them. */
		GROUP,

		/** Nobody, or before the segment on practice ice. */
		NONE

	}

	/**
	 * What a team's time is made of beside its programme.
	 *
	 * @param warmUp who warms up together
	 * @param warmUpSeconds how long
	 * @param entering from the announcement to the first movement
	 * @param leaving from the last movement until the ice is empty
	 * @param markingPlacement until all cards are closed, in placement judging
	 * @param markingPoints the same in points judging
	 */
	public record TeamTime(WarmUp warmUp, int warmUpSeconds, int entering, int leaving, int markingPlacement,
			int markingPoints) {

		/** Until all cards are closed, in one way of judging. */
		public int marking(boolean points) {
			return points ? this.markingPoints : this.markingPlacement;
		}

		/** The same with another time until all cards are closed. */
		public TeamTime marking(boolean points, int seconds) {
			return new TeamTime(this.warmUp, this.warmUpSeconds, this.entering, this.leaving,
					points ? this.markingPlacement : seconds, points ? seconds : this.markingPoints);
		}

		/** From one team's call to the next one's. */
		public int rotation(int programme, boolean points) {
			return ((this.warmUp == WarmUp.TEAM) ? this.warmUpSeconds : 0) + this.entering + programme + this.leaving
					+ marking(points);
		}

	}

	/**
	 * When the ice is resurfaced.
	 *
	 * @param after how long people may skate on it before that
	 * @param takes how long it takes
	 * @param byItself whether the plan puts it between two teams when it is due; else it
	 * only warns
	 */
	public record IceCare(int after, int takes, boolean byItself) {
	}

	/**
	 * What is warned about.
	 *
	 * @param rest the least between a team's time in one segment and in the next
	 * @param changing the least between two teams of a club, for its changing rooms
	 * @param musicDesks how many segments can have music at once
	 */
	public record Distances(int rest, int changing, int musicDesks) {
	}

}
