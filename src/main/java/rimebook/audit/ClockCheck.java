package rimebook.audit;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks whether time went on from line to line. A clock that was put back shows here; one
 * that was wrong all the time does not, and only who saw the lines with another clock can
 * tell. Nothing was changed in the record by that, so it is a note and no fault.
 */
public final class ClockCheck {

	/** Two nodes, or one that sets its clock by the network, may differ that much. */
	private static final Duration APART = Duration.ofMinutes(1);

	/** Lines of which only the digest is here have no time. */
	private static final String BACK = """
			select number, before_it, written_at from (select number, written_at,
			 lag(written_at) over (order by number) as before_it from record_line
			 where written_at >= timestamp with time zone '1970-01-02 00:00:00+00') t
			where written_at < before_it order by number""";

	private ClockCheck() {
	}

	/**
	 * Compare the time of each line with that of the line before it.
	 * @param connection an open connection to the database, left open
	 * @return a sentence for each time that the clock went back
	 * @throws SQLException if the record cannot be read
	 */
	public static List<String> check(Connection connection) throws SQLException {
		List<String> notes = new ArrayList<>();
		try (Statement statement = connection.createStatement(); ResultSet row = statement.executeQuery(BACK)) {
			while (row.next()) {
				Instant before = row.getObject("before_it", OffsetDateTime.class).toInstant();
				Instant then = row.getObject("written_at", OffsetDateTime.class).toInstant();
				if (then.plus(APART).isBefore(before)) {
					notes.add("The clock was put back before line " + row.getLong("number") + ", from "
							+ ChainDigest.time(before) + " to " + ChainDigest.time(then) + ".");
				}
			}
		}
		return notes;
	}

}
