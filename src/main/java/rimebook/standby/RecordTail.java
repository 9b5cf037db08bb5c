package rimebook.standby;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Reads of the record how far it has come, and its newest lines; by its tables alone. */
@Component
class RecordTail {

	private static final int MOST = 10_000;

	private final JdbcClient database;

	RecordTail(JdbcClient database) {
		this.database = database;
	}

	RecordHead head() {
		return this.database.sql("select number, digest from record_head where id = 1")
			.query((row, at) -> new RecordHead(row.getLong(1), row.getString(2)))
			.single();
	}

	/** The lines after that one, the oldest first, 10,000 at most. */
	List<LostLine> after(long number) {
		return this.database.sql("""
				select number, written_at, actor, role, subject, subject_id, action, before_text, after_text, reason,
				digest from record_line where number > :number order by number fetch first :most rows only""")
			.param("number", number)
			.param("most", MOST)
			.query((row, at) -> line(row))
			.list();
	}

	private static LostLine line(ResultSet row) throws SQLException {
		return new LostLine(row.getLong(1), row.getObject(2, OffsetDateTime.class).toInstant(), row.getString(3),
				row.getString(4), row.getString(5), row.getString(6), row.getString(7), row.getString(8),
				row.getString(9), row.getString(10), row.getString(11));
	}

}
