package rimebook.performances;

import java.util.Set;

import rimebook.panels.SeatId;

/**
 * The closing of cards although some are missing.
 *
 * @param version the version of the performance the referee was looking at
 * @param absent the seats whose card will not come
 * @param rule by which rule, such as its number in the rulebook in force, up to 120
 * characters
 * @param reason why, up to 500 characters
 */
public record CloseWithout(PerformanceId performance, int version, Set<SeatId> absent, String rule, String reason) {

	public CloseWithout {
		absent = Set.copyOf(absent);
	}

}
