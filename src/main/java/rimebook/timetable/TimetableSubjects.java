package rimebook.timetable;

import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.shared.SubjectNames;

/** A timetable by the name of its competition, whose identity it has. */
@Component
@Transactional(readOnly = true)
class TimetableSubjects implements SubjectNames {

	private final Competitions competitions;

	TimetableSubjects(Competitions competitions) {
		this.competitions = competitions;
	}

	@Override
	public Optional<SubjectNames.Named> nameOf(String subject, UUID id) {
		return subject.equals("timetable") ? Optional.of(name(this.competitions.competition(new CompetitionId(id))))
				: Optional.empty();
	}

	private static SubjectNames.Named name(CompetitionView competition) {
		return new SubjectNames.Named(competition.name(), competition.zone());
	}

}
