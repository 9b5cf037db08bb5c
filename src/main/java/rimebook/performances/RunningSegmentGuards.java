package rimebook.performances;

import java.util.List;
import java.util.Optional;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CancellationGuard;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.PlannedElements;
import rimebook.panels.Panels;
import rimebook.wording.Sentence;

/** What can no longer change once a segment is open, or while a team is on the ice. */
@Component
@Order(1)
class RunningSegmentGuards implements StartingOrderDraw.Guard, Panels.Guard, CancellationGuard {

	private final PerformanceRepository performances;

	private final Competitions competitions;

	RunningSegmentGuards(PerformanceRepository performances, Competitions competitions) {
		this.performances = performances;
		this.competitions = competitions;
	}

	/** Numbers were called aloud from the first call on. */
	@Override
	@Transactional(readOnly = true)
	public Optional<Sentence> refusal(SegmentId segment) {
		return this.performances.existsBySegmentAndCalledAtNotNull(segment.value())
				? Optional.of(Sentence.of("performances.order-stays")) : Optional.empty();
	}

	@Override
	@Transactional(readOnly = true)
	public Optional<Sentence> caution(SegmentId segment) {
		return this.performances.existsBySegment(segment.value())
				? Optional.of(Sentence.of("performances.order-of-open-segment")) : Optional.empty();
	}

	/** Until the first team is called, others may follow those that were drawn. */
	@Override
	@Transactional(readOnly = true)
	public Optional<Sentence> refusesAddition(SegmentId segment) {
		return this.performances.existsBySegmentAndCalledAtNotNull(segment.value())
				? Optional.of(Sentence.of("performances.nobody-added")) : Optional.empty();
	}

	@Override
	@Transactional(readOnly = true)
	public Optional<Sentence> refusal(EventId event) {
		return this.competitions.event(event)
			.segments()
			.stream()
			.filter((segment) -> !segment.isCancelled() && isUnderWay(segment.id()))
			.findFirst()
			.map((segment) -> Sentence.of("performances.panel-stays", segment.name()));
	}

	private boolean isUnderWay(SegmentId segment) {
		List<Performance> all = this.performances.findBySegmentOrderByStartNumber(segment.value());
		return all.stream().anyMatch((performance) -> !performance.status().isDone());
	}

	/** Nothing is cancelled while a team is on the ice or its cards are open. */
	@Override
	public Optional<Sentence> againstCancelling(EventView event, List<SegmentView> segments) {
		return segments.stream()
			.flatMap((segment) -> this.performances.findLockedBySegment(segment.id().value()).stream())
			.filter(Performance::takesCards)
			.findFirst()
			.map((performance) -> Sentence.of("performances.cards-open-before-cancelling", performance.startNumber()));
	}

	/** What teams mean to skate stays as it is once their segment is open. */
	@Component
	static class Plans implements PlannedElements.Guard {

		private final PerformanceRepository performances;

		Plans(PerformanceRepository performances) {
			this.performances = performances;
		}

		@Override
		public Optional<Sentence> refusal(SegmentId segment) {
			return this.performances.existsBySegment(segment.value())
					? Optional.of(Sentence.of("performances.plans-stay")) : Optional.empty();
		}

	}

}
