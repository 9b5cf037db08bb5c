package rimebook.entries;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Whereabouts;
import rimebook.shared.SubjectNames;

/** Entries by the name of the team. */
@Component
@Transactional(readOnly = true)
class EntrySubjects implements SubjectNames {

	private final Entries entries;

	private final Whereabouts whereabouts;

	EntrySubjects(Entries entries, Whereabouts whereabouts) {
		this.entries = entries;
		this.whereabouts = whereabouts;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		return subject.equals("entry") ? Optional.of(name(this.entries.entry(new EntryId(id)))) : Optional.empty();
	}

	private SubjectNames.Named name(EntryView entry) {
		return this.whereabouts.of(entry.event(), entry.team().name());
	}

}
