package rimebook.entries.web;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.entries.ClubView;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.TeamView;

/** An entry as people read it, times in the zone of the rink. */
record EntryRow(EntryId id, TeamView.Id teamId, ClubView.Id clubId, String team, String spokenAs, String club,
		String town, boolean entered, String lateReason, ZonedDateTime enteredAt, @Nullable ZonedDateTime withdrawnAt,
		String withdrawnReason) {

	static EntryRow of(EntryView view, ZoneId zone) {
		Instant gone = view.withdrawnAt();
		return new EntryRow(view.id(), view.team().id(), view.team().club().id(), view.team().name(),
				view.team().spokenAs(), view.team().club().name(), view.team().club().town(), view.isEntered(),
				view.lateReason(), view.enteredAt().atZone(zone), (gone != null) ? gone.atZone(zone) : null,
				view.withdrawnReason());
	}

	/** Tell whether the text stands somewhere in team, club or town. */
	boolean holds(String text) {
		String wanted = text.strip().toLowerCase(Locale.ROOT);
		return Stream.of(this.team, this.club, this.town)
			.anyMatch((name) -> name.toLowerCase(Locale.ROOT).contains(wanted));
	}

}
