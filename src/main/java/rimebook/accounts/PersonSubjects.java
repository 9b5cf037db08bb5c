package rimebook.accounts;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.SubjectName;
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
	public Optional<SubjectName> nameOf(String subject, UUID id) {
		return subject.equals("person")
				? Optional.of(SubjectName.of(this.people.person(new PersonId(id)).displayName())) : Optional.empty();
	}

}
