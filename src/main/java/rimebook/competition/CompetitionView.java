package rimebook.competition;

import java.time.LocalDate;
import java.time.ZoneId;

/**
 * A competition as others see it.
 *
 * @param slug its name in public addresses, unique among competitions
 * @param zone the time zone of the rink; every time of the day is shown in it
 * @param rulebook name and edition of the rulebook in force, as text
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record CompetitionView(CompetitionId id, String slug, String name, String place, ZoneId zone, LocalDate firstDay,
		LocalDate lastDay, String rulebook, CompetitionState state, int version) {

}
