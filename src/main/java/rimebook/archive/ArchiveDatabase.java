package rimebook.archive;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;

import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Databases with the tables of this version, without the service. */
public final class ArchiveDatabase {

	private ArchiveDatabase() {
	}

	/**
	 * Give a database its tables, or bring those that it has up to date, as the service
	 * does at its start. One of H2 that is not there is made.
	 * @throws ArchiveRefusal if that cannot be done
	 */
	public static void prepare(String url, String user, String password) {
		String vendor = url.startsWith("jdbc:h2:") ? "h2" : "postgresql";
		try {
			Flyway.configure()
				.loggers(FlywayQuiet.class.getName())
				.dataSource(url, user, password)
				.locations("classpath:db/migration/common", "classpath:db/migration/" + vendor)
				.load()
				.migrate();
		}
		catch (FlywayException ex) {
			throw new ArchiveRefusal(
					"The tables could not be made: " + NoRoom.or(ex, String.valueOf(ex.getMessage())) + ".", ex);
		}
	}

	/** Do something with an empty database in memory that is gone afterwards. */
	static void inMemory(Use use) throws SQLException {
		String url = "jdbc:h2:mem:archive-" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1";
		prepare(url, "rimebook", "");
		try (Connection connection = DriverManager.getConnection(url, "rimebook", "");
				Statement end = connection.createStatement()) {
			try {
				connection.setAutoCommit(false);
				use.of(connection);
			}
			finally {
				rollBack(connection, false, Connection.TRANSACTION_READ_COMMITTED);
				end.execute("shutdown immediately");
			}
		}
	}

	/**
	 * From now on all tables are seen as they are at the first look, whatever others
	 * commit meanwhile. H2 promises that only for the highest level: "repeatable read"
	 * shows each table as it is when that one is first looked at.
	 */
	static void readOneMoment(Connection connection) throws SQLException {
		boolean h2 = connection.getMetaData().getDatabaseProductName().equals("H2");
		connection
			.setTransactionIsolation(h2 ? Connection.TRANSACTION_SERIALIZABLE : Connection.TRANSACTION_REPEATABLE_READ);
	}

	/**
	 * End whatever was not committed; what failed before says more than that this does.
	 */
	static void rollBack(Connection connection, boolean commits, int isolation) {
		try {
			connection.rollback();
			connection.setTransactionIsolation(isolation);
			connection.setAutoCommit(commits);
		}
		catch (SQLException ex) {
			// A database that is gone has nothing left to roll back
		}
	}

	/** What is done with a database. */
	interface Use {

		void of(Connection connection) throws SQLException;

	}

}
