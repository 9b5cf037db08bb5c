package rimebook.audit;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.regex.Pattern;

/**
 * A line of the record as people read it: names instead of identities, and the time of
 * the rink. What it leaves out stands in the line itself.
 *
 * @param line the line as it was written
 * @param name what it is about; empty where that is gone or has no name
 * @param zone the zone of the rink it is about
 */
public record ReadableLine(RecordLine line, String name, ZoneId zone) {

	private static final Pattern IDENTITY = Pattern
		.compile("\\b[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}\\b");

	/** A digest is told by its first digits, as elsewhere. */
	private static final Pattern DIGEST = Pattern.compile("\\b([0-9a-f]{12})[0-9a-f]{52}\\b");

	/** When it was written, by the clock of that rink. */
	public ZonedDateTime at() {
		return this.line.writtenAt().atZone(this.zone);
	}

	/** What was there before, without identities. */
	public String before() {
		return readable(this.line.before());
	}

	/** What is there now, without identities. */
	public String after() {
		return readable(this.line.after());
	}

	/** Why, without identities. */
	public String reason() {
		return readable(this.line.reason());
	}

	/**
	 * Tell whether something is left out of what was there before, is there now, or why.
	 */
	public boolean isShortened() {
		return !before().equals(this.line.before()) || !after().equals(this.line.after())
				|| !reason().equals(this.line.reason());
	}

	private static String readable(String text) {
		return DIGEST.matcher(IDENTITY.matcher(text).replaceAll("…")).replaceAll("$1…");
	}

}
