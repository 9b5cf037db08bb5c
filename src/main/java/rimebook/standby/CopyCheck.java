package rimebook.standby;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Takes a copy out of its file and reads it: a copy that was never opened is none.
 *
 * @param user who signs in to the database
 */
record CopyCheck(String user, String password) {

	static final String FILE = ".mv.db";

	/**
	 * Read the record's head of a copy.
	 * @throws IOException if it is no copy, or not a whole one
	 */
	RecordHead headOf(Path copy) throws IOException {
		return headOf(copy, Pace.NONE);
	}

	/** The same at that pace. */
	RecordHead headOf(Path copy, Pace pace) throws IOException {
		Path folder = Files.createTempDirectory("rimebook-copy");
		Path database = folder.resolve("check" + FILE);
		try {
			unpack(copy, database, pace);
			return headIn(database);
		}
		finally {
			Files.deleteIfExists(database);
			Files.deleteIfExists(folder.resolve("check.trace.db"));
			Files.deleteIfExists(folder);
		}
	}

	/** Write the database that lies in a copy. */
	static void unpack(Path copy, Path database, Pace pace) throws IOException {
		try (InputStream file = pace.over(Files.newInputStream(copy)); ZipInputStream zip = new ZipInputStream(file)) {
			for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
				if (entry.getName().endsWith(FILE)) {
					Files.copy(zip, database);
					return;
				}
			}
		}
		throw new IOException("no database in " + copy.getFileName());
	}

	private RecordHead headIn(Path database) throws IOException {
		try (Connection connection = open(database, ";ACCESS_MODE_DATA=r");
				Statement statement = connection.createStatement();
				ResultSet row = statement.executeQuery("select number, digest from record_head where id = 1")) {
			if (!row.next()) {
				throw new IOException("no record in it");
			}
			return new RecordHead(row.getLong(1), row.getString(2));
		}
		catch (SQLException ex) {
			throw new IOException("it cannot be opened: " + ex.getMessage(), ex);
		}
	}

	/** Open the database in that file, which has to be there. */
	Connection open(Path database, String settings) throws SQLException {
		String name = database.toAbsolutePath().toString();
		return DriverManager.getConnection(
				"jdbc:h2:file:" + name.substring(0, name.length() - FILE.length()) + ";IFEXISTS=TRUE" + settings,
				this.user, this.password);
	}

}
