package rimebook.music;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.Whereabouts;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.shared.SubjectNames;

/** Music by the team whose it is; what is done to all of a competition by that. */
@Component
@Transactional(readOnly = true)
class MusicSubjects implements SubjectNames {

	private final Entries entries;

	private final Competitions competitions;

	private final Whereabouts whereabouts;

	MusicSubjects(Entries entries, Competitions competitions, Whereabouts whereabouts) {
		this.entries = entries;
		this.competitions = competitions;
		this.whereabouts = whereabouts;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		return subject.equals("music") ? Optional.of(name(id)) : Optional.empty();
	}

	private SubjectNames.Named name(UUID id) {
		Optional<CompetitionView> whole = this.competitions.all()
			.stream()
			.filter((competition) -> competition.id().equals(new CompetitionId(id)))
			.findFirst();
		return whole.map((competition) -> new SubjectNames.Named(competition.name(), competition.zone()))
			.orElseGet(() -> ofTeam(this.entries.entry(new EntryId(id))));
	}

	private SubjectNames.Named ofTeam(EntryView entry) {
		return this.whereabouts.of(entry.event(), entry.team().name());
	}

}
