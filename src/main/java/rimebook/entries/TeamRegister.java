package rimebook.entries;

import org.springframework.stereotype.Component;

import rimebook.shared.Ids;

/** Finds clubs and teams by their names, and writes down those that are new. */
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
		Team team = this.teams.findFirstByClubAndNameIgnoreCaseOrderByName(club, order.team())
			.orElseGet(() -> this.teams.save(new Team(this.ids.next(), club, order.team())));
		team.say(order.spokenAs());
		return team;
	}

	private Club club(String name, String town) {
		Club club = this.clubs.findFirstByNameIgnoreCaseOrderByName(name)
			.orElseGet(() -> this.clubs.save(new Club(this.ids.next(), name, town)));
		club.checkTown(town);
		return club;
	}

}
