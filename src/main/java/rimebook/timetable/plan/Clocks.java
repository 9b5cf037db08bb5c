package rimebook.timetable.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times as they stand in a sentence at the desk: "14:32". */
final class Clocks {

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

	private Clocks() {
	}

	static String time(Instant instant, ZoneId zone) {
		return TIME.format(instant.atZone(zone));
	}

	static String dayAndTime(Instant instant, ZoneId zone) {
		return DAY.format(instant.atZone(zone));
	}

	/** Whole minutes, rounded up. */
	static int minutes(Duration duration) {
		return Math.toIntExact(duration.plusSeconds(59).toMinutes());
	}

}
