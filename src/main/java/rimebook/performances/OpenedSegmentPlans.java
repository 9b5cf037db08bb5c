package rimebook.performances;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.entries.PlannedElements;
import rimebook.wording.Sentence;

/** What teams mean to skate stays as it is once their segment is open. */
@Component
class OpenedSegmentPlans implements PlannedElements.Guard {

	private final PerformanceRepository performances;

	OpenedSegmentPlans(PerformanceRepository performances) {
		this.performances = performances;
	}

	@Override
	public Optional<Sentence> refusal(SegmentId segment) {
		return this.performances.existsBySegment(segment.value()) ? Optional.of(Sentence.of("performances.plans-stay"))
				: Optional.empty();
	}

}
