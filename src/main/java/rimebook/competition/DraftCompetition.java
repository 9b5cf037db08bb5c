package rimebook.competition;

import java.time.LocalDate;
import java.time.ZoneId;

import rimebook.shared.Name;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * The facts of a competition as the secretary writes them down. Texts are trimmed.
 *
 * @param name up to 120 characters
 * @param place up to 120 characters
 * @param zone the time zone of the rink
 * @param firstDay the first day on the ice
 * @param lastDay the last one; may be the first day, at most 60 days later
 * @param rulebook name and edition of the rulebook in force, up to 300 characters
 * @throws RuleViolationException naming the field that does not fit
 */
public record DraftCompetition(String name, String place, ZoneId zone, LocalDate firstDay, LocalDate lastDay,
		String rulebook) {

	private static final int LONGEST_DAYS = 60;

	public DraftCompetition {
		name = Name.required("name", name);
		place = Required.text("place", place, 120);
		rulebook = Required.text("rulebook", rulebook, 300);
		checkDays(firstDay, lastDay);
	}

	private static void checkDays(LocalDate firstDay, LocalDate lastDay) {
		if (lastDay.isBefore(firstDay)) {
			throw new RuleViolationException("days-reversed", "lastDay",
					Sentence.of("competition.days-reversed", lastDay.toString(), firstDay.toString()));
		}
		if (lastDay.isAfter(firstDay.plusDays(LONGEST_DAYS))) {
			throw new RuleViolationException("days-too-many", "lastDay",
					Sentence.of("competition.days-too-many", lastDay.toString(), LONGEST_DAYS, firstDay.toString()));
		}
	}

}
