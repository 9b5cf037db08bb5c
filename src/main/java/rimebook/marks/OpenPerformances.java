package rimebook.marks;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.shared.NotFoundException;

/**
 * Takes hold of a performance for which something is sent: only one on the ice will do,
 * or one whose cards were opened again.
 */
@Component
class OpenPerformances {

	private final PerformanceRepository performances;

	OpenPerformances(PerformanceRepository performances) {
		this.performances = performances;
	}

	/**
	 * Take hold until the transaction ends.
	 * @throws NotFoundException if there is none of that identity
	 */
	Performance hold(PerformanceId id) {
		return this.performances.findLockedById(id.value()).orElseThrow(() -> NotFoundException.of("performance", id));
	}

	/**
	 * Look at one without taking hold.
	 * @throws NotFoundException if there is none of that identity
	 */
	Performance find(PerformanceId id) {
		return this.performances.findById(id.value()).orElseThrow(() -> NotFoundException.of("performance", id));
	}

	/** Those of a segment for which cards are taken now. */
	List<Performance> takingCards(SegmentId segment) {
		return this.performances.findBySegmentOrderByStartNumber(segment.value())
			.stream()
			.filter(Performance::takesCards)
			.toList();
	}

	/**
	 * Refuse what is sent for a performance that is neither on the ice nor opened again.
	 * @throws rimebook.shared.ConflictException {@code card-closed} or
	 * {@code performance-not-open}
	 */
	static void requireOnIce(Performance performance) {
		if (!performance.takesCards()) {
			throw PerformanceRefusals.notTakingCards(performance);
		}
	}

}
