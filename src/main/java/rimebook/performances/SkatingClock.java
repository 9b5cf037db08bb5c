package rimebook.performances;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.shared.Actor;

/** What the run of a segment needs to know of the clock of a performance. */
public interface SkatingClock {

	/** Tell whether an act on the clock counts, such as its start. */
	boolean isTouched(PerformanceView performance);

	/**
	 * Tell whether the team may let others skate first: broken off, or to skate again.
	 */
	boolean canWait(PerformanceView performance);

	/**
	 * Refuse what is done about a finding that rests on a touch taken back meanwhile.
	 * @param touch which touch, by the time of its finding; {@code null} for none
	 * @throws rimebook.shared.ConflictException {@code stale-version}
	 */
	void requireFound(PerformanceView performance, @Nullable Instant touch);

	/**
	 * Refuse to close the cards of a team that has not come to its stop.
	 * @throws rimebook.shared.ConflictException {@code clock-running}
	 */
	void requireAtRest(PerformanceView performance);

	/**
	 * Refuse to take back the call of a team that has started.
	 * @throws rimebook.shared.ConflictException {@code clock-started}
	 */
	void requireUntouched(PerformanceView performance);

	/** Let the clock stand as before the order to skate again. */
	void takeBackReskate(PerformanceView first, Actor actor);

	/**
	 * The programme on the ice was broken off, or is no longer.
	 *
	 * @param interrupted whether it is broken off now
	 */
	record ProgrammeBroken(SegmentId segment, boolean interrupted) {

	}

}
