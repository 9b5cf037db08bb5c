package rimebook.audit;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of the record as people read it: names instead of identities, and the time of
 * the rink, also where a text names a moment. What it leaves out stands in the line
 * itself.
 * <p>
 * Identities, digests and moments are found in the texts by their shape. That is all
 * there is of them: a line holds what it is about and who did it as fields of their own,
 * but what was before, what is now and why are sentences, whose bytes the line's digest
 * covers, and lines of earlier days must read as well as those of today. So nothing is
 * decided by what is found here. It is only shown otherwise, and where the shape
 * deceives, the line itself still says what was written.
 *
 * @param line the line as it was written
 * @param name what it is about; empty where that is gone or has no name
 * @param zone the zone of the rink it is about
 */
record ReadableLine(RecordLine line, String name, ZoneId zone) {

	private static final Pattern IDENTITY = Pattern
		.compile("\\b[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}\\b");

	/** A digest is told by its first digits, as elsewhere. */
	private static final Pattern DIGEST = Pattern.compile("\\b([0-9a-f]{12})[0-9a-f]{52}\\b");

	/** As instants are written into texts, to the second or finer. */
	private static final Pattern INSTANT = Pattern
		.compile("\\b\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}(:\\d{2}(\\.\\d{1,9})?)?Z");

	/** As the page writes the time of a line. */
	private static final DateTimeFormatter IN_WORDS = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm:ss zzz",
			Locale.ENGLISH);

	/** When it was written, by the clock of that rink. */
	public ZonedDateTime at() {
		return this.line.writtenAt().atZone(this.zone);
	}

	/** What was there before, without identities, moments by the rink's clock. */
	public String before() {
		return readable(this.line.change().before());
	}

	/** What is there now, without identities, moments by the rink's clock. */
	public String after() {
		return readable(this.line.change().after());
	}

	/** Why, without identities, moments by the rink's clock. */
	public String reason() {
		return readable(this.line.change().reason());
	}

	/**
	 * Tell whether something reads otherwise than it was written in what was there
	 * before, is there now, or why.
	 */
	public boolean isShortened() {
		return !before().equals(this.line.change().before()) || !after().equals(this.line.change().after())
				|| !reason().equals(this.line.change().reason());
	}

	private String readable(String text) {
		String named = DIGEST.matcher(IDENTITY.matcher(text).replaceAll("…")).replaceAll("$1…");
		return INSTANT.matcher(named).replaceAll((found) -> Matcher.quoteReplacement(byTheRink(found.group())));
	}

	/** What only looks like an instant stays as it is. */
	private String byTheRink(String instant) {
		try {
			return Instant.parse(instant).atZone(this.zone).format(IN_WORDS);
		}
		catch (DateTimeParseException ex) {
			return instant;
		}
	}

}
