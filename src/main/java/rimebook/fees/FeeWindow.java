package rimebook.fees;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/**
 * When fees change: until the competition is put away, since money comes and goes after
 * every result is official.
 */
@Component
class FeeWindow {

	private final Competitions competitions;

	FeeWindow(Competitions competitions) {
		this.competitions = competitions;
	}

	/**
	 * Take hold of a competition for a change of its fees.
	 * @throws ConflictException {@code fees-archived}
	 */
	CompetitionView hold(CompetitionId id) {
		CompetitionView competition = this.competitions.holding(id);
		if (competition.state() == CompetitionState.ARCHIVED) {
			throw new ConflictException("fees-archived", Sentence.of("fees.archived"));
		}
		return competition;
	}

}
