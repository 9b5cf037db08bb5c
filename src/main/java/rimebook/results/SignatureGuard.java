package rimebook.results;

import java.util.Optional;

import rimebook.competition.SegmentId;

/** Lets later modules hold back a signature, such as while a protest is undecided. */
public interface SignatureGuard {

	/** Return why the segment cannot be signed now, or empty. */
	Optional<String> refusal(SegmentId segment);

}
