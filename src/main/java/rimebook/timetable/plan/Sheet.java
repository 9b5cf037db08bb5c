package rimebook.timetable.plan;

import java.time.LocalTime;
import java.util.List;

/**
 * When the ice of one surface can be used on one day.
 *
 * @param begins when the first block begins, at the rink's clock
 * @param closes when the rink closes; a time not after {@code begins} is on the next day
 * @param resurfacings when the ice is resurfaced whatever is on: at the first change
 * between two teams at or after each of these times
 */
public record Sheet(Plan.Place place, LocalTime begins, LocalTime closes, List<LocalTime> resurfacings) {

	public Sheet {
		resurfacings = resurfacings.stream().sorted().distinct().toList();
	}

}
