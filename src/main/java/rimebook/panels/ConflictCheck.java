package rimebook.panels;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.entries.Entries;
import rimebook.entries.EntryState;
import rimebook.entries.EntryView;
import rimebook.entries.TeamView;
import rimebook.shared.FoldedName;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

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

	/**
	 * Who of those on the seats of an event is bound to one of its teams, as things are
	 * now.
	 */
	List<SeatConflict> conflicts(EventId event, List<Seat> seats) {
		Field field = field(event);
		Map<OfficialView.Id, List<Interest>> declared = this.interests
			.of(seats.stream().map(Seat::official).filter(Objects::nonNull).map(Official::id).toList());
		return seats.stream().flatMap((seat) -> conflict(seat, field, declared).stream()).toList();
	}

	private static Optional<SeatConflict> conflict(Seat seat, Field field,
			Map<OfficialView.Id, List<Interest>> declared) {
		Official official = seat.official();
		if (official == null || !seat.place().kind().isBoundByConflicts()) {
			return Optional.empty();
		}
		OfficialView view = official.view();
		List<Sentence> grounds = field.grounds(view, declared.getOrDefault(view.id(), List.of()));
		return grounds.isEmpty() ? Optional.empty()
				: Optional.of(new SeatConflict(seat.id(), seat.place(), view.name(), grounds, seat.unsettled(grounds)));
	}

	/**
	 * Check a seating.
	 * @return the override to keep, none where nothing speaks against it
	 * @throws RuleViolationException {@code official-bound} when something does and no
	 * reason is given
	 */
	Seat.Allowance allowanceFor(Panels.SeatOfficial seating, OfficialView official) {
		List<Sentence> grounds = seating.kind().isBoundByConflicts()
				? field(seating.event()).grounds(official, this.interests.of(official.id())) : List.of();
		if (!grounds.isEmpty() && seating.overrideReason().isEmpty()) {
			throw new RuleViolationException("official-bound", "official",
					Sentence.of("panels.official-bound", official.name(), Series.withSemicolons(grounds)));
		}
		return grounds.isEmpty() ? Seat.Allowance.NONE : new Seat.Allowance(seating.overrideReason(), grounds);
	}

	private Field field(EventId event) {
		return new Field(
				this.entries.ofEvent(event)
					.stream()
					.filter((entry) -> entry.state() == EntryState.ENTERED)
					.map(EntryView::team)
					.toList(),
				this.competitions.competition(this.competitions.event(event).competition()).facts().firstDay());
	}

	/** The teams of an event and the day by which bonds are counted. */
	private record Field(List<TeamView> teams, LocalDate firstDay) {

		List<Sentence> grounds(OfficialView official, List<Interest> declared) {
			List<Sentence> grounds = new ArrayList<>();
			ownClub(FoldedName.ofClub(official.club())).ifPresent(grounds::add);
			grounds.addAll(nearlyOwnClub(official.club()));
			declared.stream().filter((interest) -> interest.bindsOn(this.firstDay)).forEach((interest) -> {
				if (this.teams.stream().anyMatch((team) -> interest.isOf(team.name()))) {
					grounds.add(interest.spoken());
				}
				else {
					nearly(interest).ifPresent(grounds::add);
				}
			});
			return grounds;
		}

		private Optional<Sentence> ownClub(FoldedName own) {
			List<String> names = this.teams.stream()
				.filter((team) -> own.isSameAs(FoldedName.ofClub(team.club().name())))
				.map(TeamView::name)
				.toList();
			return names.isEmpty() ? Optional.empty()
					: Optional.of(Sentence.of("panels.bond.own-club", Series.withCommas(names)));
		}

		/** A near miss is asked about like a bond, since a slip would hide one. */
		private List<Sentence> nearlyOwnClub(String club) {
			FoldedName own = FoldedName.ofClub(club);
			return this.teams.stream()
				.map((team) -> team.club().name())
				.distinct()
				.filter((other) -> own.isNear(FoldedName.ofClub(other)))
				.map((other) -> Sentence.of("panels.bond.nearly-own-club", club, other))
				.toList();
		}

		private Optional<Sentence> nearly(Interest interest) {
			return this.teams.stream()
				.map(TeamView::name)
				.filter(interest::isNearly)
				.findFirst()
				.map((team) -> Sentence.of("panels.bond.nearly", interest.spoken(), team));
		}

	}

}
