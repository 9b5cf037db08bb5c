package rimebook.panels;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.entries.Entries;
import rimebook.entries.EntryState;
import rimebook.entries.EntryView;
import rimebook.entries.TeamView;
import rimebook.shared.RuleViolationException;

/**
 * Nobody sits in judgement on a team they are bound to: of their own club, which is
 * common practice, or by an interest they declared, on the grounds of Skate Canada rule
 * 2502, which binds judges, referees, technical and data officials alike. The rulebook in
 * force decides, therefore an override with its reason is possible and stays on record.
 */
@Component
class ConflictCheck {

	private final Entries entries;

	private final Competitions competitions;

	private final DeclaredInterests interests;

	ConflictCheck(Entries entries, Competitions competitions, DeclaredInterests interests) {
		this.entries = entries;
		this.competitions = competitions;
		this.interests = interests;
	}

	/** What speaks against whoever sits on that seat, if anything does. */
	Optional<SeatConflict> conflict(Seat seat) {
		Official official = seat.official();
		if (official == null) {
			return Optional.empty();
		}
		List<String> grounds = grounds(seat.event(), seat.place().kind(), official.view());
		return grounds.isEmpty() ? Optional.empty() : Optional.of(new SeatConflict(seat.id(), grounds));
	}

	/**
	 * Check a seating.
	 * @return the override reason to keep, empty where nothing speaks against it
	 * @throws RuleViolationException {@code official-bound} when something does and no
	 * reason is given
	 */
	String overrideFor(SeatOfficial seating, OfficialView official) {
		List<String> grounds = grounds(seating.event(), seating.kind(), official);
		if (!grounds.isEmpty() && seating.overrideReason().isEmpty()) {
			throw new RuleViolationException("official-bound", "official", official.name() + " is bound to this event: "
					+ String.join("; ", grounds)
					+ ". Nobody judges a team they are bound to (Skate Canada rule 2502; own club: common practice); "
					+ "the rulebook in force decides. Choose somebody else, or give the reason for an override.");
		}
		return grounds.isEmpty() ? "" : seating.overrideReason();
	}

	private List<String> grounds(EventId event, SeatKind kind, OfficialView official) {
		if (!kind.isBoundByConflicts()) {
			return List.of();
		}
		List<TeamView> teams = this.entries.ofEvent(event)
			.stream()
			.filter((entry) -> entry.state() == EntryState.ENTERED)
			.map(EntryView::team)
			.toList();
		List<String> grounds = new ArrayList<>();
		ownClub(official, teams).ifPresent(grounds::add);
		grounds.addAll(declared(official, teams, firstDay(event)));
		return grounds;
	}

	private LocalDate firstDay(EventId event) {
		return this.competitions.competition(this.competitions.event(event).competition()).firstDay();
	}

	private static Optional<String> ownClub(OfficialView official, List<TeamView> teams) {
		ClubName own = new ClubName(official.club());
		List<String> names = teams.stream()
			.filter((team) -> own.isSameAs(new ClubName(team.club().name())))
			.map(TeamView::name)
			.toList();
		return names.isEmpty() ? Optional.empty() : Optional.of("own club, " + String.join(", ", names));
	}

	private List<String> declared(OfficialView official, List<TeamView> teams, LocalDate day) {
		return this.interests.of(official.id())
			.stream()
			.filter((interest) -> interest.bindsOn(day))
			.filter((interest) -> teams.stream().anyMatch((team) -> interest.isOf(new ClubName(team.name()))))
			.map(Interest::inWords)
			.toList();
	}

}
