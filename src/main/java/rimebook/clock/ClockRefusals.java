package rimebook.clock;

import java.util.List;

import rimebook.performances.PerformanceRefusals;
import rimebook.performances.PerformanceView;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;

/** The sentences with which a touch of the clock is refused, each written once. */
final class ClockRefusals {

	private ClockRefusals() {
	}

	static ConflictException notOnIce(PerformanceView performance) {
		return new ConflictException("clock-closed", clockOf(performance) + " can be touched only while it is on the "
				+ "ice; it is " + PerformanceRefusals.words(performance.status()) + ".");
	}

	static ConflictException touchedMeanwhile(PerformanceView performance, ClockView clock) {
		return ConflictException.outdated("Somebody else touched the clock of start number " + performance.startNumber()
				+ " meanwhile: it is " + clock.state().words()
				+ " now. Nothing was changed; look at it, then repeat what is still needed.");
	}

	static ConflictException notFromHere(PerformanceView performance, ClockView clock, ClockView.ClockAct act) {
		return new ConflictException("clock-state",
				clockOf(performance) + " is " + clock.state().words() + "; from there it cannot be "
						+ ((act == ClockView.ClockAct.RESKATE) ? "set back for a re-skate" : act.words()) + ".");
	}

	static ConflictException nothingToTakeBack(PerformanceView performance) {
		return new ConflictException("clock-state",
				clockOf(performance) + " was not touched yet; there is nothing to take back.");
	}

	static ConflictException touchGone(PerformanceView performance) {
		return ConflictException.outdated(clockOf(performance)
				+ " was touched meanwhile, and what it had found no longer stands. Nothing was changed.");
	}

	/** Whoever takes a touch back is asked first what goes with it. */
	static ConflictException takesAlong(PerformanceView performance, List<String> along) {
		return new ConflictException("clock-takes-along",
				along.isEmpty()
						? "What was to be taken back with the touch is no longer there. Nothing was changed; "
								+ "look at it, then repeat."
						: clockOf(performance) + ": with this touch goes what was done because of it: "
								+ String.join("; ", along) + ". Nothing was changed; look at it, then confirm.");
	}

	static ConflictException underWay(PerformanceView performance) {
		return new ConflictException("clock-running", clockOf(performance)
				+ " has not been stopped. Stop it, take its start back, or end the performance; then close the cards.");
	}

	static ConflictException hasStarted(PerformanceView performance) {
		return new ConflictException("clock-started",
				clockOf(performance) + " was started. Take its start back first; then the call can be taken back.");
	}

	static RuleViolationException markingMissing() {
		return new RuleViolationException("field-missing", "marking",
				"Please choose what the judges mark when the programme is skated again; the rulebook in force says.");
	}

	static RuleViolationException nothingInterrupted() {
		return new RuleViolationException("nothing-interrupted", "marking",
				"The programme was skated to its end; of a re-skate then only the whole second skate can count.");
	}

	private static String clockOf(PerformanceView performance) {
		return "The clock of start number " + performance.startNumber();
	}

}
