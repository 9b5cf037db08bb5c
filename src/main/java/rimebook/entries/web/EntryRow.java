package rimebook.entries.web;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.TeamView;

/**
 * An entry as people read it, times in the zone of the rink.
 *
 * @param lateReason why it was accepted after entries had closed; empty when in time
 * @param withdrawal {@code null} while the team takes part
 */
record EntryRow(EntryId id, TeamView team, ZonedDateTime enteredAt, String lateReason,
		@Nullable Withdrawal withdrawal) {

	static EntryRow of(EntryView view, ZoneId zone) {
		EntryView.Withdrawal gone = view.withdrawal();
		return new EntryRow(view.id(), view.team(), view.acceptance().enteredAt().atZone(zone),
				view.acceptance().lateReason(),
				(gone != null) ? new Withdrawal(gone.at().atZone(zone), gone.reason()) : null);
	}

	/** Tell whether the team takes part. */
	public boolean isEntered() {
		return this.withdrawal == null;
	}

	/** Tell whether the text stands somewhere in team, club or town. */
	boolean holds(String text) {
		String wanted = text.strip().toLowerCase(Locale.ROOT);
		return Stream.of(this.team.name(), this.team.club().name(), this.team.club().town())
			.anyMatch((name) -> name.toLowerCase(Locale.ROOT).contains(wanted));
	}

	/** That the team withdrew, and why. */
	record Withdrawal(ZonedDateTime at, String reason) {
	}

}
