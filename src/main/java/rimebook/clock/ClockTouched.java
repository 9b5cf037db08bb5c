package rimebook.clock;

import rimebook.competition.SegmentId;
import rimebook.performances.PerformanceId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/**
 * The clock of the performance on the ice was touched.
 *
 * @param before how it stood before
 * @param after how it stands now
 */
record ClockTouched(PerformanceId performance, SegmentId segment, ClockView.ClockState before,
		ClockView.ClockState after, AuditedChange change) implements AuditedEvent {

	/** Tell whether the team was broken off by it, or is no longer. */
	public boolean isBreak() {
		return isInterrupted() != (this.before == ClockView.ClockState.INTERRUPTED);
	}

	/** Tell whether the team is broken off now. */
	public boolean isInterrupted() {
		return this.after == ClockView.ClockState.INTERRUPTED;
	}

}
