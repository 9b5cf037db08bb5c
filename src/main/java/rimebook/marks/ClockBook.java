package rimebook.marks;

import java.time.Instant;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentView;

/** The clocks of all performances, read from their touches. */
@Component
class ClockBook {

	private final ClockTapRepository taps;

	private final Competitions competitions;

	ClockBook(ClockTapRepository taps, Competitions competitions) {
		this.taps = taps;
		this.competitions = competitions;
	}

	ClockView of(Performance performance) {
		SegmentView segment = this.competitions.eventOf(performance.segment()).segment(performance.segment());
		return ClockReading.of(
				this.taps.findByPerformanceOrderBySequence(performance.id().value())
					.stream()
					.map(ClockTap::view)
					.toList(),
				performance.isAgain() ? null : performance.view().calledAt(), performance.skate(),
				new ProgrammeWindow(segment.programmeSeconds(), segment.toleranceSeconds(), segment.shorterSeconds()));
	}

	void add(ClockTap tap) {
		this.taps.save(tap);
	}

	/**
	 * Refuse what is done about a finding that rests on a touch taken back meanwhile.
	 * @param touch which touch, as {@link ClockFinding#since}; {@code null} for none
	 * @throws rimebook.shared.ConflictException {@code stale-version}
	 */
	void requireFound(Performance performance, @Nullable Instant touch) {
		if (touch != null && of(performance).findings().stream().noneMatch((one) -> one.since().equals(touch))) {
			throw ClockRefusals.touchGone(performance);
		}
	}

	/**
	 * Refuse to close the cards of a team that has not come to its stop.
	 * @throws rimebook.shared.ConflictException {@code clock-running}
	 */
	void requireAtRest(Performance performance) {
		if (of(performance).state().isUnderWay()) {
			throw ClockRefusals.underWay(performance);
		}
	}

	/**
	 * Refuse to take back the call of a team that has started.
	 * @throws rimebook.shared.ConflictException {@code clock-started}
	 */
	void requireUntouched(Performance performance) {
		if (of(performance).last() != null) {
			throw ClockRefusals.hasStarted(performance);
		}
	}

}
