package rimebook.marks.web;

import rimebook.marks.PerformanceId;
import rimebook.marks.PerformanceStatus;
import rimebook.marks.StandView;

/**
 * A line of the running order.
 *
 * @param mark how it stands to the ice: now, next, waiting, done, again or gap
 * @param reason why there is a gap or the cards are open again, else empty
 * @param canReopen whether its closed cards can be opened again
 */
record OrderRow(PerformanceId id, int number, int group, String team, String club, String spokenAs,
		PerformanceStatus status, String mark, String reason, boolean canReopen) {

	static OrderRow of(StandView.Row row, StandView stand) {
		return new OrderRow(row.performance().id(), row.performance().startNumber(), row.performance().group(),
				row.team(), row.club(), row.spokenAs(), row.performance().status(), mark(row, stand),
				row.performance().statusReason(), stand.reopened() == null && row.equals(stand.lastClosed()));
	}

	private static String mark(StandView.Row row, StandView stand) {
		return switch (row.performance().status()) {
			case ON_ICE -> "now";
			case WAITING -> row.equals(stand.next()) ? "next" : "waiting";
			case CLOSED -> "done";
			case REOPENED -> "again";
			case WITHDRAWN, NOT_FINISHED, DISQUALIFIED -> "gap";
		};
	}

	/** Tell whether two officials can set how it came through. */
	public boolean canCorrect() {
		return this.status.isDone();
	}

	/** Tell whether it can still be ended without marks that count. */
	public boolean canEnd() {
		return this.status.canBecome(PerformanceStatus.DISQUALIFIED);
	}

}
