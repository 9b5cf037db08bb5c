package rimebook.results;

import java.util.List;

import rimebook.competition.SegmentId;

/**
 * Lets later modules say what has to be so before a result is signed, such as that no
 * protest is undecided. One truth serves both: what is missing here is what a signature
 * is refused for, and the results desk shows every line of it. Guards are asked in the
 * order of their {@link org.springframework.core.annotation.Order}.
 */
public interface SignatureGuard {

	/**
	 * Return every condition that this guard watches over for the segment, met or not.
	 */
	List<SignatureChecklist.SignatureCondition> conditions(SegmentId segment);

}
