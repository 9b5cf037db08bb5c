package rimebook.performances;

/**
 * How a team came through a segment.
 *
 * @param status withdrawn, not finished or disqualified; closed where its marks shall
 * count again; waiting or on the ice where it has still to skate
 */
public record StatusAmendment(PerformanceStatus status) implements Amendment {

	/** That a team came through so. */
	public static Amendment.SupposedChange<StatusAmendment> on(PerformanceId performance, PerformanceStatus status) {
		return new Amendment.SupposedChange<>(performance, null, new StatusAmendment(status));
	}

	@Override
	public String place() {
		return "how the team came through";
	}

	@Override
	public String words() {
		return this.status.inWords();
	}

	@Override
	public int longestReason() {
		return 500;
	}

}
