package rimebook.entries;

import java.util.Optional;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.StillOpen;
import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** When planned elements may change: as long as nobody refuses. */
@Component
class PlanWindow {

	private final Competitions competitions;

	private final ObjectProvider<PlannedElements.Guard> guards;

	private final StillOpen stillOpen;

	PlanWindow(Competitions competitions, ObjectProvider<PlannedElements.Guard> guards, StillOpen stillOpen) {
		this.stillOpen = stillOpen;
		this.competitions = competitions;
		this.guards = guards;
	}

	/**
	 * Take hold of the competition for a change of the plans for a segment of the event.
	 * @throws ConflictException {@code plan-fixed} once the segment is opened, and where
	 * nothing of it may change any more
	 */
	void hold(EventView event, SegmentId segment) {
		this.competitions.holding(event.id());
		this.stillOpen.require(segment);
		refusal(segment).ifPresent((refusal) -> {
			throw new ConflictException("plan-fixed", refusal);
		});
	}

	/** Why no plan for a segment can change any more; empty if one can. */
	Optional<Sentence> refusal(SegmentId segment) {
		return this.guards.orderedStream().flatMap((guard) -> guard.refusal(segment).stream()).findFirst();
	}

}
