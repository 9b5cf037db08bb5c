package rimebook.entries;

import java.util.Optional;

import rimebook.competition.SegmentId;

/**
 * Has a say before planned elements are changed. Every bean of this type is asked, inside
 * the transaction of the change.
 */
@FunctionalInterface
public interface PlanGuard {

	/**
	 * Say why the plans for a segment must stay as they are, or nothing if they may
	 * change.
	 * @return a sentence for people, ending with a full stop
	 */
	Optional<String> refusal(SegmentId segment);

}
