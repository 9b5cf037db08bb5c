package rimebook.entries;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Whereabouts;
import rimebook.shared.SubjectNames;

/** Entries by the name of the team; clubs and teams, which are at no rink, by theirs. */
@Component
@Transactional(readOnly = true)
class EntrySubjects implements SubjectNames {

	private final Entries entries;

	private final ClubRepository clubs;

	private final TeamRepository teams;

	private final Whereabouts whereabouts;

	EntrySubjects(Entries entries, ClubRepository clubs, TeamRepository teams, Whereabouts whereabouts) {
		this.entries = entries;
		this.clubs = clubs;
		this.teams = teams;
		this.whereabouts = whereabouts;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		return switch (subject) {
			case "entry" -> Optional.of(name(this.entries.entry(new EntryId(id))));
			case "club" -> this.clubs.findById(id).map((club) -> SubjectNames.Named.of(club.view().name()));
			case "team" -> this.teams.findById(id).map((team) -> SubjectNames.Named.of(name(team.view())));
			default -> Optional.empty();
		};
	}

	private static String name(TeamView team) {
		return team.name() + ", " + team.club().name();
	}

	private SubjectNames.Named name(EntryView entry) {
		return this.whereabouts.of(entry.event(), entry.team().name());
	}

}
