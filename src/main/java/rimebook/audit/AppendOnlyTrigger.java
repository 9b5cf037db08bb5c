package rimebook.audit;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Locale;

import org.h2.api.Trigger;
import org.jspecify.annotations.Nullable;

/**
 * Refuses on H2 to change or delete rows of the tables that keep what was written. Public
 * because the database makes it by name; on PostgreSQL a function of the migration does
 * the same.
 */
public class AppendOnlyTrigger implements Trigger {

	/** The SQL state of a refusal, the same on both databases. */
	static final String REFUSED = "23001";

	private String table = "";

	@Override
	public void init(Connection connection, String schema, String trigger, String table, boolean before, int type) {
		this.table = table.toLowerCase(Locale.ROOT);
	}

	@Override
	public void fire(Connection connection, Object @Nullable [] oldRow, Object @Nullable [] newRow)
			throws SQLException {
		throw new SQLException(
				"The table " + this.table
						+ " keeps what was written: its rows are never changed or deleted. A new fact is a new row.",
				REFUSED);
	}

}
