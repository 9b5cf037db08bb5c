package rimebook.draw;

import java.util.Optional;

import rimebook.competition.SegmentId;

/**
 * Has a say before a segment is drawn or drawn again. Every bean of this type is asked,
 * inside the transaction of the draw.
 */
@FunctionalInterface
public interface DrawGuard {

	/**
	 * Say why the segment must not be drawn any more, or nothing if it may.
	 * @return a sentence for people, ending with a full stop
	 */
	Optional<String> refusal(SegmentId segment);

}
