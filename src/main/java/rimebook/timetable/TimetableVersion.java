package rimebook.timetable;

import java.time.Instant;

import rimebook.competition.CompetitionId;
import rimebook.timetable.plan.Programmed;

/**
 * A published timetable. It never changes; the highest number is in force.
 *
 * @param number 1 for the first
 * @param plan the number of the plan that it was made of
 * @param act when, by whom and why
 * @param timetable what it promises
 */
public record TimetableVersion(CompetitionId competition, int number, int plan, Act act, Programmed timetable) {

	/**
	 * That it was published.
	 *
	 * @param note why it differs from the one before, for everybody to read; may be empty
	 * @param at when, UTC
	 */
	public record Act(String note, String by, Instant at) {
	}

}
