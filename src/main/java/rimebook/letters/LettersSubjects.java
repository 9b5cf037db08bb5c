package rimebook.letters;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.shared.SubjectNames;

/** Letters by their competition: the record says of no team what was written to it. */
@Component
@Transactional(readOnly = true)
class LettersSubjects implements SubjectNames {

	private final Competitions competitions;

	LettersSubjects(Competitions competitions) {
		this.competitions = competitions;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		if (!subject.equals("letters")) {
			return Optional.empty();
		}
		CompetitionView competition = this.competitions.competition(new CompetitionId(id));
		return Optional.of(new SubjectNames.Named(competition.name(), competition.zone()));
	}

}
