package rimebook.arrival;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Whereabouts;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.shared.SubjectNames;

/** Who came, by the team. */
@Component
@Transactional(readOnly = true)
class ArrivalSubjects implements SubjectNames {

	private final Entries entries;

	private final Whereabouts whereabouts;

	ArrivalSubjects(Entries entries, Whereabouts whereabouts) {
		this.entries = entries;
		this.whereabouts = whereabouts;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		if (!subject.equals("arrival") && !subject.equals("lineup")) {
			return Optional.empty();
		}
		EntryView entry = this.entries.entry(new EntryId(id));
		return Optional.of(this.whereabouts.of(entry.event(), entry.team().name()));
	}

}
