package rimebook.clock;

import java.util.List;

import rimebook.performances.PerformanceRefusals;
import rimebook.performances.PerformanceView;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/** The sentences with which a touch of the clock is refused, each written once. */
final class ClockRefusals {

	private ClockRefusals() {
	}

	static ConflictException notOnIce(PerformanceView performance) {
		return new ConflictException("clock-closed", Sentence.of("clock.not-on-ice", performance.startNumber(),
				PerformanceRefusals.spoken(performance.status())));
	}

	static ConflictException touchedMeanwhile(PerformanceView performance, ClockView clock) {
		return ConflictException
			.outdated(Sentence.of("clock.touched-meanwhile", performance.startNumber(), clock.state().spoken()));
	}

	static ConflictException notFromHere(PerformanceView performance, ClockView clock, ClockView.ClockAct act) {
		return new ConflictException("clock-state",
				Sentence.of("clock.not-from-here", performance.startNumber(), clock.state().spoken(), act.spoken()));
	}

	static ConflictException nothingToTakeBack(PerformanceView performance) {
		return new ConflictException("clock-state", Sentence.of("clock.not-touched", performance.startNumber()));
	}

	static ConflictException touchGone(PerformanceView performance) {
		return ConflictException.outdated(Sentence.of("clock.touch-gone", performance.startNumber()));
	}

	/** Whoever takes a touch back is asked first what goes with it. */
	static ConflictException takesAlong(PerformanceView performance, List<Sentence> along) {
		return new ConflictException("clock-takes-along", along.isEmpty() ? Sentence.of("clock.nothing-goes-along")
				: Sentence.of("clock.takes-along", performance.startNumber(), Series.withSemicolons(along)));
	}

	static ConflictException underWay(PerformanceView performance) {
		return new ConflictException("clock-running", Sentence.of("clock.under-way", performance.startNumber()));
	}

	static ConflictException hasStarted(PerformanceView performance) {
		return new ConflictException("clock-started", Sentence.of("clock.started", performance.startNumber()));
	}

	static RuleViolationException markingMissing() {
		return new RuleViolationException("field-missing", "marking", Sentence.of("clock.marking-missing"));
	}

	static RuleViolationException nothingInterrupted() {
		return new RuleViolationException("nothing-interrupted", "marking", Sentence.of("clock.nothing-interrupted"));
	}

}
