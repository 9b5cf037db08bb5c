package rimebook.timetable.plan;

import java.time.Instant;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * How far a team is in a segment, as the ice tells it.
 *
 * @param called when it was called, {@code null} where it was not
 * @param over when its cards were first closed, {@code null} while they are not
 * @param state whether it is still to come
 * @param later whether it comes after all others: it was passed over, or waits by the
 * referee's word
 * @param again whether its programme was skated more than once, so that its time is no
 * measure
 */
public record Skated(UUID segment, UUID entry, int number, @Nullable Instant called, @Nullable Instant over,
		State state, boolean later, boolean again) {

	/** The same as if it had not been called where that was at another time. */
	Skated calledWithin(Instant begins, Instant ends) {
		boolean within = this.called != null && !this.called.isBefore(begins) && this.called.isBefore(ends);
		return (within || this.called == null) ? this
				: new Skated(this.segment, this.entry, this.number, null, null, this.state, this.later, this.again);
	}

	/** The same where the segment does not take place any more: nobody is to come. */
	public Skated withoutTurn() {
		return (this.state != State.WAITING) ? this : new Skated(this.segment, this.entry, this.number, this.called,
				this.over, State.GONE, false, this.again);
	}

	/** How far a team is. */
	public enum State {

		/** To come. */
		WAITING,

		/** On the ice. */
		ON_ICE,

		/** It has skated. */
		OVER,

		/** It will not skate; its number stays empty. */
		GONE

	}

}
