package rimebook.fees.reckoning;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;

/**
 * The last second in which something is in time. What happens within that second is.
 *
 * @param second UTC
 */
public record Until(Instant second) {

	public Until {
		second = second.truncatedTo(ChronoUnit.SECONDS);
	}

	/**
	 * The end of a term as it was announced, on the clock of the rink. Where clocks are
	 * put back and show it twice, the later time is meant; where they are put ahead and
	 * never show it, it is as much later as they were.
	 */
	public static Until at(LocalDateTime there, ZoneId zone) {
		return new Until(ZonedDateTime.of(there, zone).withLaterOffsetAtOverlap().toInstant());
	}

	/** Tell whether that moment is in time. */
	public boolean holds(Instant moment) {
		return !moment.truncatedTo(ChronoUnit.SECONDS).isAfter(this.second);
	}

	/** Tell whether it ends later than that. */
	public boolean isAfter(Until other) {
		return this.second.isAfter(other.second);
	}

	/** It on the clock of a rink. */
	public LocalDateTime in(ZoneId zone) {
		return this.second.atZone(zone).toLocalDateTime();
	}

}
