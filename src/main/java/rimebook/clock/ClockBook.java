package rimebook.clock;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.SegmentView;
import rimebook.performances.PerformanceView;
import rimebook.performances.SkatingClock;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;

/** The clocks of all performances, read from their touches. */
@Component
class ClockBook implements SkatingClock {

	private final ClockTapRepository taps;

	private final Competitions competitions;

	private final Acts acts;

	ClockBook(ClockTapRepository taps, Competitions competitions, Acts acts) {
		this.acts = acts;
		this.taps = taps;
		this.competitions = competitions;
	}

	ClockView of(PerformanceView performance) {
		SegmentView segment = this.competitions.eventOf(performance.segment()).segment(performance.segment());
		return ClockReading.of(
				this.taps.findByPerformanceOrderBySequence(performance.id().value())
					.stream()
					.map(ClockTap::view)
					.toList(),
				performance.isAgain() ? null : performance.turn().calledAt(), performance.course().skate(),
				new ClockView.ProgrammeWindow(segment.facts().programmeSeconds(), segment.facts().toleranceSeconds(),
						segment.facts().shorterSeconds()));
	}

	void add(ClockTap tap) {
		this.taps.save(tap);
	}

	@Override
	public boolean isTouched(PerformanceView performance) {
		return of(performance).last() != null;
	}

	@Override
	public boolean canWait(PerformanceView performance) {
		return of(performance).canWait();
	}

	@Override
	public void requireFound(PerformanceView performance, @Nullable Instant touch) {
		if (touch != null && of(performance).findings().stream().noneMatch((one) -> one.since().equals(touch))) {
			throw ClockRefusals.touchGone(performance);
		}
	}

	@Override
	public void requireAtRest(PerformanceView performance) {
		if (of(performance).state().isUnderWay()) {
			throw ClockRefusals.underWay(performance);
		}
	}

	@Override
	public void requireUntouched(PerformanceView performance) {
		if (isTouched(performance)) {
			throw ClockRefusals.hasStarted(performance);
		}
	}

	@Override
	public void takeBackReskate(PerformanceView first, Actor actor) {
		ClockView before = of(first);
		Instant now = this.acts.now().truncatedTo(ChronoUnit.MILLIS);
		ClockView.Tap tap = new ClockView.Tap(before.touches() + 1, ClockView.ClockAct.TAKE_BACK, null, null,
				ClockView.ClockAct.RESKATE.words(), new ClockView.Tap.Noted(actor.name(), now));
		add(new ClockTap(this.acts.nextId(), first.id(), tap));
		ClockView after = of(first);
		tell(new ClockTouched(first.id(), first.segment(), before.state(), after.state(),
				AuditedChange.of(actor, "performance", first.id(), "clock.take-back")
					.from(ClockWords.state(before, tap), ClockWords.state(after, tap))
					.because("re-skate")));
	}

	/** Say that the clock was touched; what became of the programme is told apart. */
	void tell(ClockTouched touched) {
		this.acts.publish(touched);
		if (touched.isBreak()) {
			this.acts.publish(new SkatingClock.ProgrammeBroken(touched.segment(), touched.isInterrupted()));
		}
	}

}
