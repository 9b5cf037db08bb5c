package rimebook.entries;

import java.util.Optional;

import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Component;

import rimebook.shared.Ids;

/**
 * Finds clubs and teams by their names in whatever form, and writes down those that are
 * new.
 */
@Component
class TeamRegister {

	private final ClubRepository clubs;

	private final TeamRepository teams;

	private final Ids ids;

	TeamRegister(ClubRepository clubs, TeamRepository teams, Ids ids) {
		this.clubs = clubs;
		this.teams = teams;
		this.ids = ids;
	}

	Team team(EnterTeam order) {
		Club club = club(order.club(), order.town());
		Team team = known(club, order.team())
			.orElseGet(() -> this.teams.save(new Team(this.ids.next(), club, order.team())));
		team.say(order.spokenAs());
		return team;
	}

	KnownTeams known() {
		return new KnownTeams(this.clubs.findAll().stream().map(Club::view).toList(),
				this.teams.findAll().stream().map(Team::view).toList());
	}

	private Optional<Team> known(Club club, String name) {
		return this.teams.findFirstByClubAndNameIgnoreCaseOrderByName(club, name)
			.or(() -> this.teams.findByClubOrderByName(club)
				.stream()
				.filter((team) -> team.isCalled(name))
				.findFirst());
	}

	private Club club(String name, String town) {
		Club club = known(name).orElseGet(() -> this.clubs.save(new Club(this.ids.next(), name, town)));
		club.checkTown(town);
		return club;
	}

	private Optional<Club> known(String name) {
		return this.clubs.findFirstByNameIgnoreCaseOrderByName(name)
			.or(() -> this.clubs.findAll(Sort.by("name")).stream().filter((club) -> club.isCalled(name)).findFirst());
	}

}
