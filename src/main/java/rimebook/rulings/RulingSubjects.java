package rimebook.rulings;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Whereabouts;
import rimebook.entries.Entries;
import rimebook.shared.SubjectNames;

/** Questions and rulings by the team they are about. */
@Component
@Transactional(readOnly = true)
class RulingSubjects implements SubjectNames {

	private final Rulings rulings;

	private final Entries entries;

	private final Whereabouts whereabouts;

	RulingSubjects(Rulings rulings, Entries entries, Whereabouts whereabouts) {
		this.rulings = rulings;
		this.entries = entries;
		this.whereabouts = whereabouts;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		return subject.equals("ruling") ? Optional.of(name(this.rulings.question(new QuestionView.QuestionId(id))))
				: Optional.empty();
	}

	private SubjectNames.Named name(QuestionView question) {
		return this.whereabouts.of(this.entries.entry(question.party().entry()).event(), question.team());
	}

}
