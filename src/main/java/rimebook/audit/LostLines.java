package rimebook.audit;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

/**
 * The lines that were lost when the service started from a copy: those after the copy's
 * last line that were written before the start. An anchor of one of them fits nothing any
 * more, and that is as it should be. One of a line up to the copy's last has to fit as
 * ever, and so has one that was taken after the start.
 *
 * @param line the line of the record that tells of the start
 * @param startedAt when that line was written
 * @param known the last line that was in the copy
 * @param until the latest moment at which a lost line can have been written, by the
 * clocks of both machines
 */
record LostLines(long line, Instant startedAt, long known, Instant until) {

	private static final String STARTS = """
			select number, written_at, before_text, after_text from record_line
			where subject = 'service' and action = 'service.started-from-copy' and number <= ? order by number""";

	private static final Pattern KNOWN = Pattern.compile("known until \\S+, line (\\d{1,18})");

	private static final Pattern SIGN = Pattern.compile("last sign at (\\S+), line \\d{1,18}");

	/**
	 * Read what the record tells of starts from copies.
	 * @param lines how many lines of the record were found good; later ones count for
	 * nothing
	 */
	static List<LostLines> in(Connection connection, long lines) throws SQLException {
		List<LostLines> starts = new ArrayList<>();
		try (PreparedStatement statement = connection.prepareStatement(STARTS)) {
			statement.setLong(1, lines);
			try (ResultSet row = statement.executeQuery()) {
				while (row.next()) {
					of(row).ifPresent(starts::add);
				}
			}
		}
		return starts;
	}

	private static Optional<LostLines> of(ResultSet row) throws SQLException {
		Matcher known = KNOWN.matcher(row.getString("after_text"));
		if (!known.matches() || Long.parseLong(known.group(1)) >= row.getLong("number")) {
			return Optional.empty();
		}
		Instant startedAt = row.getObject("written_at", OffsetDateTime.class).toInstant();
		Instant seenAt = seenAt(row.getString("before_text"));
		return Optional.of(new LostLines(row.getLong("number"), startedAt, Long.parseLong(known.group(1)),
				(seenAt != null && seenAt.isAfter(startedAt)) ? seenAt : startedAt));
	}

	/** The last sign of the service before, by its own clock. */
	private static @Nullable Instant seenAt(String text) {
		Matcher sign = SIGN.matcher(text);
		try {
			return sign.matches() ? Instant.parse(sign.group(1)) : null;
		}
		catch (DateTimeParseException ex) {
			return null;
		}
	}

	/** Tell whether an anchor that fits nothing is that of a lost line. */
	boolean hold(Anchor anchor) {
		Instant taken = taken(anchor);
		return anchor.line() > this.known && taken != null && !taken.isAfter(this.until);
	}

	/** Tell whether it may be, but has no time by which that could be told. */
	boolean mayHold(Anchor anchor) {
		return anchor.line() > this.known && taken(anchor) == null;
	}

	/** When its line was there for certain. */
	private static @Nullable Instant taken(Anchor anchor) {
		return (anchor.writtenAt() != null) ? anchor.writtenAt() : anchor.seenAt();
	}

	/** What became of the line of an anchor. */
	String sentence(Anchor anchor) {
		return "Line " + anchor.line() + " was lost when the service started from a copy at "
				+ ChainDigest.time(this.startedAt) + "; this is expected. The anchor " + anchor.shortDigest()
				+ "… is of the lost line and says nothing of another one of that number.";
	}

	/** What to ask of whoever was there. */
	String proviso() {
		return "Line " + this.line + " tells of that start, from a copy that held lines 1 to " + this.known
				+ ". Whoever knows that there was none should take it for a record that was written anew.";
	}

	/** How it can be told whether an anchor without a time is that of a lost line. */
	String doubt() {
		return " If it was taken before the service started from a copy at " + ChainDigest.time(this.startedAt)
				+ ", its line was lost then, which is expected: write \"seen\" behind it and the time at which it was "
				+ "taken, as in \"seen " + ChainDigest.time(this.startedAt) + "\".";
	}

}
