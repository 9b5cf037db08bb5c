package rimebook.performances;

import java.util.List;
import java.util.Optional;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

import rimebook.competition.CancellationGuard;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;

/** Nothing is cancelled while a team is on the ice or its cards are open. */
@Component
@Order(1)
class NobodyOnIceGuard implements CancellationGuard {

	private final PerformanceRepository performances;

	NobodyOnIceGuard(PerformanceRepository performances) {
		this.performances = performances;
	}

	@Override
	public Optional<String> againstCancelling(EventView event, List<SegmentView> segments) {
		return segments.stream()
			.flatMap((segment) -> this.performances.findLockedBySegment(segment.id().value()).stream())
			.filter(Performance::takesCards)
			.findFirst()
			.map((performance) -> "The cards of start number " + performance.startNumber()
					+ " are open. Close them, or take the call back, before it is cancelled.");
	}

}
