package rimebook.standby;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;

/** Writes a new life into a database that the service has not opened yet. */
final class LifeRows {

	private LifeRows() {
	}

	/** The folder that the newest life began from; empty for the first. */
	static String newestFolder(Connection connection) throws SQLException {
		try (Statement statement = connection.createStatement();
				ResultSet row = statement
					.executeQuery("select copy_folder from service_life order by number desc fetch first row only")) {
			return row.next() ? row.getString(1) : "";
		}
	}

	/** All of it or nothing. */
	static void begin(Connection connection, UUID life, Instant now, ServiceLife.Origin from, List<LostLine> lost)
			throws SQLException {
		boolean alone = connection.getAutoCommit();
		connection.setAutoCommit(false);
		try (PreparedStatement row = connection.prepareStatement("""
				insert into service_life (number, id, began_at, copy_name, copy_folder, known_until, known_line,
				seen_at, seen_line, noted) select max(number) + 1, cast(? as uuid), ?, ?, ?, ?, ?, ?, ?, false
				from service_life""")) {
			fill(row, life, time(now), from.copy(), from.folder(), time(from.knownUntil()), from.knownLine(),
					time(from.seenAt()), from.seenLine());
			row.executeUpdate();
		}
		try (PreparedStatement row = connection.prepareStatement("""
				insert into lost_line (life, number, written_at, actor, role, subject, subject_id, action, before_text,
				after_text, reason, done_by) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, '')""")) {
			for (LostLine line : lost) {
				fill(row, life, line.number(), time(line.at()), line.actor(), line.role(), line.subject(),
						line.subjectId(), line.action(), line.before(), line.after(), line.reason());
				row.executeUpdate();
			}
		}
		connection.commit();
		connection.setAutoCommit(alone);
	}

	private static void fill(PreparedStatement row, Object... values) throws SQLException {
		for (int at = 0; at < values.length; at++) {
			row.setObject(at + 1, values[at]);
		}
	}

	private static OffsetDateTime time(Instant at) {
		return OffsetDateTime.ofInstant(at, ZoneOffset.UTC);
	}

}
