package rimebook.competition;

import java.util.List;
import java.util.Optional;

import rimebook.wording.Sentence;

/**
 * Has a say before an event or some of its segments are cancelled, brought back or
 * removed. Every bean of this type is asked inside the transaction of the act and may
 * take hold of what its answer rests on. An answer is a whole sentence.
 */
public interface CancellationGuard {

	/**
	 * Say why they must take place, or nothing if they may be cancelled.
	 * @param segments those that would fall away: one, or all of the event
	 */
	default Optional<Sentence> againstCancelling(EventView event, List<SegmentView> segments) {
		return Optional.empty();
	}

	/**
	 * Say what has happened since that contradicts them, or nothing if they may take
	 * place again.
	 * @param segments those that were cancelled: one, or all of the event
	 */
	default Optional<Sentence> againstBringingBack(EventView event, List<SegmentView> segments) {
		return Optional.empty();
	}

	/**
	 * Say what hangs on them, or nothing if they may be removed without a trace but the
	 * record. Asked also where an event is changed to one without them.
	 * @param segments those that would be removed: some, or all of the event
	 */
	default Optional<Sentence> againstRemoving(EventView event, List<SegmentView> segments) {
		return Optional.empty();
	}

}
