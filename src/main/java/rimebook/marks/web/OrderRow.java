package rimebook.marks.web;

import rimebook.marks.PerformanceId;
import rimebook.marks.PerformanceStatus;
import rimebook.marks.StandView;

/**
 * A line of the running order.
 *
 * @param mark how it stands to the ice: now, next, waiting, done or gap
 * @param reason why there is a gap, else empty
 */
record OrderRow(PerformanceId id, int number, int group, String team, String club, String spokenAs,
		PerformanceStatus status, String mark, String reason) {

	static OrderRow of(StandView.Row row, StandView stand) {
		return new OrderRow(row.performance().id(), row.performance().startNumber(), row.performance().group(),
				row.team(), row.club(), row.spokenAs(), row.performance().status(), mark(row, stand),
				row.performance().statusReason());
	}

	private static String mark(StandView.Row row, StandView stand) {
		return switch (row.performance().status()) {
			case ON_ICE -> "now";
			case WAITING -> row.equals(stand.next()) ? "next" : "waiting";
			case CLOSED -> "done";
			case WITHDRAWN, NOT_FINISHED, DISQUALIFIED -> "gap";
		};
	}

	/** Tell whether it can still be ended without marks that count. */
	public boolean canEnd() {
		return this.status.canBecome(PerformanceStatus.DISQUALIFIED);
	}

}
