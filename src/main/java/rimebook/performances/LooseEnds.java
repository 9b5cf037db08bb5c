package rimebook.performances;

import java.util.Optional;

import rimebook.competition.SegmentId;

/** Tells what may still wait behind the performances of a segment. */
public interface LooseEnds {

	/** What there is to settle in a segment; empty where it is of no concern. */
	Optional<LooseEnd> of(SegmentId segment);

}
