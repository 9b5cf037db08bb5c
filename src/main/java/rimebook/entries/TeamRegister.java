package rimebook.entries;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Component;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;

/**
 * Finds clubs and teams by their names in whatever form, and writes down those that are
 * new.
 */
@Component
class TeamRegister {

	private final ClubRepository clubs;

	private final TeamRepository teams;

	private final Acts acts;

	TeamRegister(ClubRepository clubs, TeamRepository teams, Acts acts) {
		this.clubs = clubs;
		this.teams = teams;
		this.acts = acts;
	}

	/** The team that is to be entered; what of it is new or changes is told as such. */
	Team team(EnterTeam order, Actor actor) {
		Club club = club(order.club(), order.town(), actor);
		Optional<Team> known = known(club, order.team());
		Team team = known.orElseGet(() -> this.teams.save(new Team(this.acts.nextId(), club, order.team())));
		String before = known.map(Team::inWords).orElse("");
		team.say(order.spokenAs());
		if (!team.inWords().equals(before)) {
			this.acts
				.publish(AuditedChange.of(actor, "team", team.id(), known.isPresent() ? "team.changed" : "team.added")
					.from(before, team.inWords()));
		}
		return team;
	}

	KnownTeams known() {
		List<Club> all = this.clubs.findAll();
		KnownTeams known = new KnownTeams(all.stream().filter((club) -> !club.isMerged()).map(Club::view).toList(),
				this.teams.findAll().stream().map(Team::view).toList());
		all.stream()
			.filter(Club::isMerged)
			.forEach((one) -> known.alsoCalled(one.view().name(), today(one).view().name()));
		return known;
	}

	private Optional<Team> known(Club club, String name) {
		return this.teams.findFirstByClubAndNameIgnoreCaseOrderByName(club, name)
			.or(() -> this.teams.findByClubOrderByName(club)
				.stream()
				.filter((team) -> team.isCalled(name))
				.findFirst());
	}

	private Club club(String name, String town, Actor actor) {
		Club club = known(name).orElseGet(() -> added(name, town, actor));
		if (club.isMerged()) {
			return today(club);
		}
		club.checkTown(town);
		return club;
	}

	/** The club itself, or which one it turned out to be. */
	private Club today(Club club) {
		UUID other = club.mergedInto();
		return (other != null) ? this.clubs.findById(other).orElse(club) : club;
	}

	private Club added(String name, String town, Actor actor) {
		Club club = this.clubs.save(new Club(this.acts.nextId(), name, town));
		this.acts.publish(AuditedChange.of(actor, "club", club.id(), "club.added").to(club.inWords()));
		return club;
	}

	private Optional<Club> known(String name) {
		return this.clubs.findFirstByNameIgnoreCaseOrderByName(name)
			.or(() -> this.clubs.findAll(Sort.by("name")).stream().filter((club) -> club.isCalled(name)).findFirst());
	}

}
