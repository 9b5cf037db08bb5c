package rimebook.audit;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads lines in their order, a few hundred at a time. A database that was not opened
 * since there are identities has lines of form 1 only and no columns for more.
 */
final class RecordLineReader {

	/** How many are read at once. */
	static final int AT_ONCE = 500;

	private static final String AFTER = "select * from record_line where number > ? order by number " + "fetch first "
			+ AT_ONCE + " rows only";

	private RecordLineReader() {
	}

	/** The next lines after that number, none at the end. */
	static List<RecordLine> after(Connection connection, long number) throws SQLException {
		try (PreparedStatement statement = connection.prepareStatement(AFTER)) {
			statement.setLong(1, number);
			try (ResultSet rows = statement.executeQuery()) {
				boolean identities = hasIdentities(rows.getMetaData());
				List<RecordLine> lines = new ArrayList<>();
				while (rows.next()) {
					lines.add(line(rows, identities));
				}
				return lines;
			}
		}
	}

	/** Tell whether the record has the columns of today. */
	static boolean haveIdentities(Connection connection) throws SQLException {
		try (PreparedStatement statement = connection.prepareStatement(AFTER)) {
			statement.setLong(1, Long.MAX_VALUE);
			try (ResultSet rows = statement.executeQuery()) {
				return hasIdentities(rows.getMetaData());
			}
		}
	}

	private static boolean hasIdentities(ResultSetMetaData columns) throws SQLException {
		return hasColumn(columns, "actor_id");
	}

	/** Tell whether a table has a column that is not in every database. */
	static boolean hasColumn(ResultSetMetaData columns, String name) throws SQLException {
		for (int column = 1; column <= columns.getColumnCount(); column++) {
			if (name.equalsIgnoreCase(columns.getColumnName(column))) {
				return true;
			}
		}
		return false;
	}

	/** A row with all columns of today. */
	static RecordLine line(ResultSet row) throws SQLException {
		return line(row, true);
	}

	private static RecordLine line(ResultSet row, boolean identities) throws SQLException {
		int form = identities ? row.getInt("form") : RecordLine.FORM_WITHOUT_ID;
		return new RecordLine(
				new RecordLine.Link(
						row.getLong("number"), form, row.getString("previous_digest"), row.getString("digest")),
				row.getObject("written_at", OffsetDateTime.class).toInstant(),
				new RecordLine.Who(row.getString("actor"), identities ? row.getString("actor_id") : "",
						row.getString("role"), row.getString("device")),
				new RecordLine.Thing(row.getString("subject"), row.getString("subject_id"),
						identities ? row.getString("evidence") : ""),
				new RecordLine.Change(row.getString("action"), row.getString("before_text"),
						row.getString("after_text"), row.getString("reason")));
	}

}
