package rimebook.rosters.web;

import java.time.ZonedDateTime;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.entries.EntryView;
import rimebook.rosters.ContactView;
import rimebook.rosters.RosterView;
import rimebook.rosters.TeamCheck;
import rimebook.wording.Sentence;

/**
 * A team on the list of what is missing.
 *
 * @param deadline until when its roster changes freely, on the rink's clock, {@code null}
 * where none was set
 * @param from whom to ask, {@code null} where nobody is known
 * @param waived how many rules are not held against it
 * @param twice how many on its roster may have been written down twice
 */
record TeamRow(EntryView entry, EventView event, RosterView roster, List<Sentence> missing,
		@Nullable ZonedDateTime deadline, @Nullable ContactView from, int waived, int twice) {

	static TeamRow of(TeamCheck team, CompetitionView competition, int twice) {
		return new TeamRow(team.entry(), team.event(), team.roster(), team.missing(),
				(team.rules().deadline() != null) ? team.rules().deadline().atZone(competition.zone()) : null,
				team.fromWhom(), team.waived().size(), twice);
	}

}
