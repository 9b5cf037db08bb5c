package rimebook.performances;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.competition.StillOpen;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;

/**
 * All performances of a segment, held until the transaction ends: for acts on one of them
 * that depend on how the others stand.
 *
 * @param performance the one that is acted on
 * @param others the other ones of its segment
 */
record HeldSegment(Performance performance, List<Performance> others) {

	/**
	 * Refuse to go on while the cards of another team are open again.
	 * @throws ConflictException {@code another-reopened}
	 */
	void requireNoneReopened() {
		reopened().ifPresent((other) -> {
			throw PerformanceRefusals.anotherReopened(other);
		});
	}

	/**
	 * Refuse to call a team while another is on the ice.
	 * @throws ConflictException {@code another-on-ice}
	 */
	void requireIceFree() {
		this.others.stream().filter(Performance::isOnIce).findFirst().ifPresent((other) -> {
			throw PerformanceRefusals.anotherOnIce(other);
		});
	}

	/**
	 * Refuse to call a team before the one that comes next without saying why; a team
	 * that was let wait by the referee has its reason already.
	 * @throws rimebook.shared.RuleViolationException {@code call-reason-missing}
	 */
	void requireInOrder(String reason) {
		PerformanceView called = this.performance.view();
		List<PerformanceView> all = Stream.concat(Stream.of(called), this.others.stream().map(Performance::view))
			.toList();
		RunningOrder.next(all)
			.filter((next) -> reason.isEmpty() && called.status() == PerformanceStatus.WAITING
					&& !called.turn().postponed() && !next.equals(called))
			.ifPresent((next) -> {
				throw PerformanceRefusals.outOfOrder(called.startNumber(), next.startNumber());
			});
	}

	private Optional<Performance> reopened() {
		return this.others.stream().filter(Performance::isReopened).findFirst();
	}

	/**
	 * Refuse to open the cards again once those of a later team are closed.
	 * @throws ConflictException {@code later-cards-closed}
	 */
	void requireLastClosed() {
		this.others.stream()
			.filter((other) -> other.wasClosedAfter(this.performance))
			.findFirst()
			.ifPresent((later) -> {
				throw PerformanceRefusals.laterClosed(this.performance, later);
			});
	}

	/** Takes hold of segments, always in one order. */
	@Component
	static class Source {

		private final PerformanceRepository performances;

		private final StillOpen stillOpen;

		Source(PerformanceRepository performances, StillOpen stillOpen) {
			this.performances = performances;
			this.stillOpen = stillOpen;
		}

		/**
		 * Take hold of all performances of a segment that is still open; empty before it
		 * was opened.
		 */
		List<Performance> all(SegmentId segment) {
			List<Performance> all = this.performances.findLockedBySegment(segment.value());
			this.stillOpen.require(segment);
			return all;
		}

		/** Look at them without taking hold. */
		List<Performance> look(SegmentId segment) {
			return this.performances.findBySegmentOrderByStartNumber(segment.value());
		}

		/**
		 * Take hold of a performance together with all others of its segment.
		 * @param version of the performance that the person was looking at
		 */
		HeldSegment of(PerformanceId id, int version) {
			List<Performance> all = this.performances.findSegmentById(id.value())
				.map(this.performances::findLockedBySegment)
				.orElseThrow(() -> NotFoundException.of("performance", id));
			Performance performance = all.stream()
				.filter((one) -> one.id().equals(id))
				.findFirst()
				.orElseThrow(() -> setAside(id));
			this.stillOpen.require(performance.segment());
			performance.requireVersion(version);
			return new HeldSegment(performance, all.stream().filter((one) -> one != performance).toList());
		}

		/**
		 * Take hold of one performance alone, even if it was set aside.
		 * @param version of the performance that the person was looking at
		 */
		Performance one(PerformanceId id, int version) {
			Performance performance = this.performances.findLockedById(id.value())
				.orElseThrow(() -> NotFoundException.of("performance", id));
			this.stillOpen.require(performance.segment());
			performance.requireVersion(version);
			return performance;
		}

		private ConflictException setAside(PerformanceId id) {
			return this.performances.findById(id.value())
				.map(Performance::view)
				.map(PerformanceRefusals::setAside)
				.orElseThrow(() -> NotFoundException.of("performance", id));
		}

	}

}
