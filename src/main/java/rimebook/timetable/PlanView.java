package rimebook.timetable;

import java.time.Instant;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.timetable.plan.Laid;
import rimebook.timetable.plan.Plan;
import rimebook.timetable.plan.Programme;

/**
 * The plan of a competition as it stands, with the times that follow from it today.
 *
 * @param number how many states it had, 0 before the first; give it back with a change,
 * so that nobody overwrites another's
 * @param last what was done last, {@code null} before anything was
 * @param programme what it was laid out with
 */
public record PlanView(CompetitionId competition, int number, @Nullable Act last, Plan plan, Programme programme,
		Laid laid) {

	/** Tell whether something was done that can be taken back. */
	public boolean canBeTakenBack() {
		return this.number > 0;
	}

	/**
	 * What was done.
	 *
	 * @param action as on the record
	 * @param at when, UTC
	 */
	public record Act(String action, String by, Instant at) {
	}

	/**
	 * An act with what it did.
	 *
	 * @param changes in the words of the record
	 */
	public record Step(Act act, List<Change> changes) {
	}

	/**
	 * A piece of a plan that became another.
	 *
	 * @param before empty where it is new
	 * @param after empty where it is gone
	 */
	public record Change(String before, String after) {
	}

}
