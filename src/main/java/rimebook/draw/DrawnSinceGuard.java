package rimebook.draw;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.CancellationGuard;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.wording.Sentence;

/** A segment does not come back before one that was drawn without it. */
@Component
class DrawnSinceGuard implements CancellationGuard {

	private final StartingOrderRepository orders;

	DrawnSinceGuard(StartingOrderRepository orders) {
		this.orders = orders;
	}

	@Override
	public Optional<Sentence> againstBringingBack(EventView event, List<SegmentView> segments) {
		SegmentView last = segments.get(segments.size() - 1);
		Instant since = (last.cancellation() != null) ? last.cancellation().since() : Instant.MAX;
		return event.segments()
			.stream()
			.filter((later) -> later.position() > last.position() && drawnSince(later, since))
			.findFirst()
			.map((later) -> Sentence.of("draw.drawn-since", later.name(), last.name()));
	}

	private boolean drawnSince(SegmentView segment, Instant since) {
		return this.orders.findFirstBySegmentIdOrderByNumberDesc(segment.id().value())
			.filter((order) -> order.view().act().drawnAt().isAfter(since))
			.isPresent();
	}

}
