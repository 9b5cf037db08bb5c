package rimebook.pages;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

/** The clock on the wall of the rink. */
public record RinkClock(ZoneId zone) {

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

	/** The time of day with seconds, empty for no time. */
	public String time(@Nullable Instant instant) {
		return (instant != null) ? TIME.format(instant.atZone(this.zone)) : "";
	}

}
