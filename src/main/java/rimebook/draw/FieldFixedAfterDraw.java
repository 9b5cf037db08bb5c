package rimebook.draw;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;

/**
 * Once a segment of an event is drawn, the event and its field stay as they are: numbers
 * that were read out are never shifted.
 */
@Component
class FieldFixedAfterDraw {

	private final StartingOrderRepository orders;

	private final Competitions competitions;

	FieldFixedAfterDraw(StartingOrderRepository orders, Competitions competitions) {
		this.orders = orders;
		this.competitions = competitions;
	}

	/** The first segment of the event that is drawn. */
	Optional<SegmentView> drawnSegment(EventId id) {
		EventView event = this.competitions.event(id);
		return event.segments()
			.stream()
			.filter((segment) -> this.orders.existsBySegmentId(segment.id().value()))
			.findFirst();
	}

}
