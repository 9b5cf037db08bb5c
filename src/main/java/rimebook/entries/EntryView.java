package rimebook.entries;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;

/**
 * A team's entry into an event.
 *
 * @param acceptance when it was accepted
 * @param withdrawal when and why it withdrew, {@code null} while it takes part
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record EntryView(EntryId id, EventId event, TeamView team, Acceptance acceptance,
		@Nullable Withdrawal withdrawal, int version) {

	/** Whether the team takes part. */
	public EntryState state() {
		return isEntered() ? EntryState.ENTERED : EntryState.WITHDRAWN;
	}

	/** Tell whether the team takes part. */
	public boolean isEntered() {
		return this.withdrawal == null;
	}

	/** Tell whether it was entered after entries had closed. */
	public boolean isLate() {
		return !this.acceptance.lateReason().isEmpty();
	}

	/**
	 * That an entry was accepted.
	 *
	 * @param lateReason why it was accepted after entries had closed; empty when in time
	 */
	public record Acceptance(Instant enteredAt, String lateReason) {
	}

	/**
	 * That a team withdrew.
	 *
	 * @param reason why, may be empty
	 */
	public record Withdrawal(Instant at, String reason) {
	}

}
