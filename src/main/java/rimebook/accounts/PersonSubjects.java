package rimebook.accounts;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.SubjectNames;

/** Accounts by the name they go by. */
@Component
@Transactional(readOnly = true)
class PersonSubjects implements SubjectNames {

	private final People people;

	PersonSubjects(People people) {
		this.people = people;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		return subject.equals("person")
				? Optional.of(SubjectNames.Named.of(this.people.person(new PersonView.Id(id)).displayName()))
				: Optional.empty();
	}

}
