package rimebook.panels;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.EventId;
import rimebook.entries.Entries;
import rimebook.entries.EntryState;
import rimebook.entries.EntryView;
import rimebook.shared.RuleViolationException;

/**
 * Nobody marks a team of their own club. That is common practice; written rules on
 * conflicts of interest (such as Skate Canada rule 2502) bar coaches, relatives and those
 * who live by the result, for judges, referees, technical and data officials alike. The
 * rulebook in force decides, therefore an override with its reason is possible and stays
 * on record.
 */
@Component
class OwnClubRule {

	private final Entries entries;

	OwnClubRule(Entries entries) {
		this.entries = entries;
	}

	/**
	 * The names of the teams of that club that are in the event, withdrawn ones aside.
	 */
	List<String> teams(EventId event, String club) {
		ClubName own = new ClubName(club);
		return this.entries.ofEvent(event)
			.stream()
			.filter((entry) -> entry.state() == EntryState.ENTERED)
			.map(EntryView::team)
			.filter((team) -> own.isSameAs(new ClubName(team.club().name())))
			.map((team) -> team.name())
			.toList();
	}

	/**
	 * The conflict of whoever sits on that seat, if the rule binds it and there is one.
	 */
	Optional<SeatConflict> conflict(Seat seat) {
		Official official = seat.official();
		if (official == null || !seat.place().kind().isBoundByOwnClubRule()) {
			return Optional.empty();
		}
		List<String> teams = teams(seat.event(), official.view().club());
		return teams.isEmpty() ? Optional.empty() : Optional.of(new SeatConflict(seat.id(), teams));
	}

	/**
	 * Check a seating.
	 * @return the override reason to keep, empty where the rule does not refuse
	 * @throws RuleViolationException {@code official-own-club} when the rule refuses and
	 * no reason is given
	 */
	String overrideFor(SeatOfficial seating, OfficialView official) {
		List<String> teams = seating.kind().isBoundByOwnClubRule() ? teams(seating.event(), official.club())
				: List.of();
		if (!teams.isEmpty() && seating.overrideReason().isEmpty()) {
			throw new RuleViolationException("official-own-club", "official", refusal(official, teams));
		}
		return teams.isEmpty() ? "" : seating.overrideReason();
	}

	private static String refusal(OfficialView official, List<String> teams) {
		return official.name() + " belongs to " + official.club() + ", and so "
				+ ((teams.size() == 1) ? "does " : "do ") + String.join(", ", teams)
				+ " in this event. Common practice: nobody marks a team of their own club; "
				+ "the rulebook in force decides. Choose somebody else, or give the reason for an override.";
	}

}
