package rimebook.entries;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;

/**
 * A team's entry into an event.
 *
 * @param lateReason why it was accepted after entries had closed; empty when in time
 * @param withdrawnAt when the team withdrew, {@code null} while it takes part
 * @param withdrawnReason why it withdrew; empty while it takes part
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record EntryView(EntryId id, EventId event, TeamView team, EntryState state, String lateReason,
		Instant enteredAt, @Nullable Instant withdrawnAt, String withdrawnReason, int version) {

	/** Tell whether the team takes part. */
	public boolean isEntered() {
		return this.state == EntryState.ENTERED;
	}

	/** Tell whether it was entered after entries had closed. */
	public boolean isLate() {
		return !this.lateReason.isEmpty();
	}

}
