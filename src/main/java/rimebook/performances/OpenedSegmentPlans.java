package rimebook.performances;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.entries.PlannedElements;

/** What teams mean to skate stays as it is once their segment is open. */
@Component
class OpenedSegmentPlans implements PlannedElements.Guard {

	private final PerformanceRepository performances;

	OpenedSegmentPlans(PerformanceRepository performances) {
		this.performances = performances;
	}

	@Override
	public Optional<String> refusal(SegmentId segment) {
		return this.performances.existsBySegment(segment.value()) ? Optional
			.of("The segment is open; planned elements stay as they are, and the technical panel calls what is skated.")
				: Optional.empty();
	}

}
