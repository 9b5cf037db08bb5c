package rimebook.entries;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import rimebook.shared.ListedNames;
import rimebook.wording.Sentence;

/**
 * Clubs and the teams of each by the names they are written down with, in which a typed
 * name is found in whatever form it was typed.
 */
final class KnownTeams {

	private final ListedNames clubs = ListedNames.ofClubs(List.of());

	/** By the names of clubs as they are written down. */
	private final Map<String, String> towns = new HashMap<>();

	/** By the names of clubs that turned out to be another one, the name of that. */
	private final Map<String, String> aliases = new HashMap<>();

	private final Map<String, ListedNames> teams = new HashMap<>();

	KnownTeams(List<ClubView> clubs, List<TeamView> teams) {
		clubs.forEach((club) -> add(club.name(), club.town()));
		teams.forEach((team) -> add(team.club().name(), team.club().town(), team.name()));
	}

	/** Find a club also by the name of one that turned out to be it. */
	void alsoCalled(String alias, String club) {
		this.clubs.add(alias);
		this.aliases.put(alias, club);
	}

	/** Write a team down, and its club where that is new. */
	void add(String club, String town, String team) {
		String known = club(club);
		add(known, town);
		this.teams.computeIfAbsent(known, (fresh) -> ListedNames.ofTeams(List.of())).add(team(known, team));
	}

	private void add(String club, String town) {
		if (this.towns.putIfAbsent(club, town) == null) {
			this.clubs.add(club);
			this.teams.put(club, ListedNames.ofTeams(List.of()));
		}
	}

	/** The club as it is written down, or as it was typed where it is new. */
	String club(String typed) {
		String known = this.clubs.same(typed).orElse(typed);
		return this.aliases.getOrDefault(known, known);
	}

	/**
	 * Where a club that is written down is at home, nothing for a new one and for a name
	 * of one that turned out to be another.
	 */
	Optional<String> town(String typed) {
		if (this.aliases.containsKey(this.clubs.same(typed).orElse(typed))) {
			return Optional.empty();
		}
		return Optional.ofNullable(this.towns.get(club(typed)));
	}

	/** The team as it is written down, or as it was typed where it is new. */
	String team(String club, String typed) {
		return teams(club).same(typed).orElse(typed);
	}

	/** What may be a slip in the names of a club and its team. */
	Optional<Slip> slip(String club, String team) {
		return this.clubs.near(club)
			.map((near) -> new Slip("club", club, near))
			.or(() -> teams(club).near(team).map((near) -> new Slip("team", team, near)));
	}

	private ListedNames teams(String club) {
		return this.teams.getOrDefault(club(club), ListedNames.ofTeams(List.of()));
	}

	/**
	 * A name that may be meant for another one.
	 *
	 * @param field {@code club} or {@code team}
	 */
	record Slip(String field, String typed, String near) {

		Sentence spoken() {
			return Sentence.of("entries.name-near", this.typed, this.near);
		}

	}

}
