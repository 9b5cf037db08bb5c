package rimebook.audit;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * The digest of what the database holds of a thing, which the line of each act on it
 * attests: every version of the cards, called elements and deductions of a performance,
 * and a correction as a whole. It is SHA-256 over the digests of the rows in ascending
 * order, each over its columns as the chain's fields are.
 *
 * <p>
 * The columns are named one by one: one that is added later does not change what was
 * attested before. Published versions need none, since their lines tell the digest of the
 * body in words. A correction from before it had an amendment was carried over: its lines
 * attest the columns of then, and {@link StoredCheck} compares both.
 */
final class Evidence {

	private static final Map<String, List<String>> STORED = Map.of("performance", List.of("""
			select 'card', id, seat_id, sequence, first_mark, second_mark, origin, received_at
			from card_submission where performance_id = ?""", """
			select 'points', id, seat_id, sequence, marks, list_sequence, origin, received_at
			from points_card where performance_id = ?""", """
			select 'elements', id, sequence, elements, origin, called_by, received_at
			from called_list where performance_id = ?""", """
			select 'deductions', id, sequence, items, origin, noted_by, received_at
			from deduction_list where performance_id = ?"""), "correction", List.of("""
			select 'correction', id, segment_id, performance_id, seat_id, protest_id, line, old_first, old_second,
			new_first, new_second, old_value, new_value, old_text, new_text, reason, state, proposed_by, proposed_at,
			decided_by, decided_at, decision_reason
			from correction where id = ?""", """
			select 'amendment', id, amendment from correction where id = ? and not carried"""));

	private Evidence() {
	}

	/**
	 * The digest for a thing, empty where nothing is stored of it, or of another kind.
	 */
	static String of(Connection connection, String subject, String subjectId) throws SQLException {
		UUID id = identity(subjectId);
		List<String> rows = new ArrayList<>();
		for (String sql : (id != null) ? STORED.getOrDefault(subject, List.of()) : List.<String>of()) {
			try (PreparedStatement statement = connection.prepareStatement(sql)) {
				statement.setObject(1, id);
				read(statement, rows);
			}
		}
		return rows.isEmpty() ? "" : ChainDigest.of(rows.stream().sorted().toArray(String[]::new));
	}

	private static @Nullable UUID identity(String subjectId) {
		try {
			return UUID.fromString(subjectId);
		}
		catch (IllegalArgumentException ex) {
			return null;
		}
	}

	private static void read(PreparedStatement statement, List<String> rows) throws SQLException {
		try (ResultSet row = statement.executeQuery()) {
			while (row.next()) {
				rows.add(digest(row));
			}
		}
	}

	private static String digest(ResultSet row) throws SQLException {
		ResultSetMetaData columns = row.getMetaData();
		String[] fields = new String[columns.getColumnCount()];
		for (int column = 1; column <= fields.length; column++) {
			boolean time = columns.getColumnLabel(column).toLowerCase(Locale.ROOT).endsWith("_at");
			fields[column - 1] = time ? time(row, column) : text(row, column);
		}
		return ChainDigest.of(fields);
	}

	private static String time(ResultSet row, int column) throws SQLException {
		OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
		return (time != null) ? ChainDigest.time(time.toInstant()) : "";
	}

	private static String text(ResultSet row, int column) throws SQLException {
		String text = row.getString(column);
		return (text != null) ? text : "";
	}

}
