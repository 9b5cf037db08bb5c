package rimebook.competition;

import java.util.Optional;

import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/**
 * How an event or one of its segments stands in the database at this moment, whatever the
 * transaction has read of it before.
 *
 * @param event the event's name
 * @param eventCancelled why the event is cancelled, empty if it is not
 * @param segment the segment's name, empty where only the event is looked at
 * @param segmentCancelled why the segment is cancelled, empty if it is not
 */
record Openness(CompetitionState state, String event, String eventCancelled, String segment, String segmentCancelled) {

	Optional<ConflictException> refusal() {
		if (!this.state.isOpenToChange()) {
			return Optional.of(Competition.closed(this.state));
		}
		if (!this.eventCancelled.isEmpty()) {
			return Optional.of(new ConflictException("event-cancelled",
					Sentence.of("competition.event-cancelled", this.event, this.eventCancelled)));
		}
		return this.segmentCancelled.isEmpty() ? Optional.empty()
				: Optional.of(new ConflictException("segment-cancelled",
						Sentence.of("competition.segment-cancelled", this.event, this.segment, this.segmentCancelled)));
	}

}
