package rimebook.draw;

import java.util.List;

import rimebook.competition.SegmentId;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Stands for the results of the segments before. */
class Outcome implements StandingBefore {

	List<StandingBefore.Ranked> standing = List.of();

	@Override
	public List<StandingBefore.Ranked> standingBefore(SegmentId segment) {
		if (this.standing.isEmpty()) {
			throw new RuleViolationException("standing-incomplete",
					Sentence.said("The segment before is not complete."));
		}
		return this.standing;
	}

}
