package rimebook.performances;

import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.shared.ConflictException;

/** What stands against setting the status of a performance afterwards. */
@Component
class StatusChecks {

	private final PerformanceRepository performances;

	private final CardBooks books;

	private final SkatingClock clocks;

	private final Competitions competitions;

	StatusChecks(PerformanceRepository performances, CardBooks books, SkatingClock clocks, Competitions competitions) {
		this.performances = performances;
		this.books = books;
		this.clocks = clocks;
		this.competitions = competitions;
	}

	/**
	 * Refuse what cannot be.
	 * @throws ConflictException with what stands against it
	 */
	void require(Performance performance, PerformanceStatus next) {
		refusal(performance, next).ifPresent((refusal) -> {
			throw refusal;
		});
	}

	Optional<ConflictException> refusal(Performance performance, PerformanceStatus next) {
		if (!performance.status().canBeCorrectedTo(next)) {
			return Optional.of(PerformanceRefusals.cannotBecome(performance, next));
		}
		if (performance.isFollowing()) {
			return Optional.of(PerformanceRefusals.following(performance));
		}
		return Optional.ofNullable(next.isEndedWithoutMarks() ? onIceLater(performance) : back(performance, next));
	}

	/**
	 * What the team does in a later segment at this moment cannot be ended in passing.
	 */
	private @Nullable ConflictException onIceLater(Performance performance) {
		return this.performances.findByEntry(performance.entry().value())
			.stream()
			.filter(Performance::takesCards)
			.findFirst()
			.map(PerformanceRefusals::busyElsewhere)
			.orElse(null);
	}

	/** Marks count again if they were closed; without any the team skates. */
	private @Nullable ConflictException back(Performance performance, PerformanceStatus next) {
		if (next != backTo(performance)) {
			return PerformanceRefusals.cannotBecome(performance, next);
		}
		return (next == PerformanceStatus.CLOSED) ? null : stillToSkate(performance, next);
	}

	private PerformanceStatus backTo(Performance performance) {
		if (performance.hasClosedCards()) {
			return PerformanceStatus.CLOSED;
		}
		boolean begun = performance.wasCalled() && (this.books.of(performance.segment()).anySentFor(performance.id())
				|| this.clocks.isTouched(performance.view()));
		return begun ? PerformanceStatus.ON_ICE : PerformanceStatus.WAITING;
	}

	private @Nullable ConflictException stillToSkate(Performance performance, PerformanceStatus next) {
		Optional<SegmentView> later = later(performance).stream()
			.filter((segment) -> this.performances.existsBySegment(segment.id().value()))
			.findFirst();
		if (later.isPresent()) {
			return PerformanceRefusals.segmentOver(performance, later.get().name());
		}
		return (next == PerformanceStatus.ON_ICE)
				? this.performances.findBySegmentOrderByStartNumber(performance.segment().value())
					.stream()
					.filter(Performance::isOnIce)
					.findFirst()
					.map(PerformanceRefusals::anotherOnIce)
					.orElse(null)
				: null;
	}

	private List<SegmentView> later(Performance performance) {
		EventView event = this.competitions.eventOf(performance.segment());
		int position = event.segment(performance.segment()).position();
		return event.segments().stream().filter((segment) -> segment.position() > position).toList();
	}

}
