package rimebook.archive;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

import org.jspecify.annotations.Nullable;

import rimebook.audit.ChainCheck;
import rimebook.audit.RecordCopy;
import rimebook.audit.RecordFinding;
import rimebook.audit.StoredCheck;

/**
 * Makes the competition of an archive again in an empty database that has the tables of
 * this version: all of it in one transaction, so that a database in which it was
 * interrupted is as empty as before.
 */
public final class ArchiveRestore {

	private static final int AT_ONCE = 200;

	/** What H2 and PostgreSQL call that which may hold rows. */
	private static final String[] KINDS = { "TABLE", "BASE TABLE", "PARTITIONED TABLE", "VIEW" };

	private final ArchivedTables tables = ArchivedTables.declared();

	private final Connection connection;

	private final ArchiveFile archive;

	private ArchiveRestore(Connection connection, ArchiveFile archive) {
		this.connection = connection;
		this.archive = archive;
	}

	/**
	 * Restore an archive that was found good, look whether what is there then is what its
	 * record tells, and commit.
	 * @throws ArchiveRefusal if the archive cannot be restored, or the database is not
	 * empty; then nothing is changed
	 */
	public static void restore(Connection connection, Path archive) throws SQLException, IOException {
		boolean commits = connection.getAutoCommit();
		int isolation = connection.getTransactionIsolation();
		connection.setAutoCommit(false);
		try (ArchiveFile file = ArchiveFile.open(archive)) {
			put(connection, file);
			connection.commit();
		}
		finally {
			ArchiveDatabase.rollBack(connection, commits, isolation);
		}
	}

	/**
	 * Look whether a database that was opened again has what was committed to it: one
	 * whose disk was full may have lost it while it was closed.
	 * @throws ArchiveRefusal if it does not end where the archive does
	 */
	public static void requireRestored(Connection connection, Path archive) throws SQLException, IOException {
		RecordFinding chain = ChainCheck.check(connection);
		try (ArchiveFile file = ArchiveFile.open(archive)) {
			if (!chain.isWhole() || !Objects.toString(file.about().get("recordHead")).equals(chain.head())) {
				throw new ArchiveRefusal("The database did not keep what was put into it. Look after its disk.");
			}
		}
	}

	/**
	 * Look whether a database has nothing that a restored one would lose or mix up;
	 * tables that it lacks are empty. Changes nothing, so that a database that somebody
	 * named by mistake stays as it is.
	 * @throws ArchiveRefusal if it has
	 */
	public static void requireEmpty(Connection connection) throws SQLException {
		Set<String> there = tables(connection);
		requireOurs(there);
		for (ArchivedTable table : ArchivedTables.declared().all()) {
			long rows = there.contains(table.name()) ? count(connection, table.name()) : 0;
			if (rows > 0) {
				throw new ArchiveRefusal("The database is not empty: it has " + rows + " rows of '" + table.name()
						+ "'. Name another one; one of H2 that is not there yet is made.");
			}
		}
		if (there.contains("record_line") && count(connection, "record_line") > 0) {
			throw new ArchiveRefusal("The database is not empty: something stands on its record.");
		}
	}

	/** A file that is replaced may hold nothing of somebody else. */
	private static void requireOurs(Set<String> there) {
		ArchivedTables declared = ArchivedTables.declared();
		Set<String> others = new TreeSet<>(there);
		others.removeAll(declared.leftOut().keySet());
		declared.all().forEach((table) -> others.remove(table.name()));
		if (!others.isEmpty()) {
			throw new ArchiveRefusal("The database is not empty: it has a table '" + others.iterator().next()
					+ "', which is none of Rimebook. Name another one; one of H2 that is not there yet is made.");
		}
	}

	private static Set<String> tables(Connection connection) throws SQLException {
		Set<String> tables = new HashSet<>();
		try (ResultSet row = connection.getMetaData().getTables(null, connection.getSchema(), "%", KINDS)) {
			while (row.next()) {
				tables.add(row.getString("TABLE_NAME").toLowerCase(Locale.ROOT));
			}
		}
		return tables;
	}

	private static long count(Connection connection, String table) throws SQLException {
		try (Statement statement = connection.createStatement();
				ResultSet row = statement.executeQuery("select count(*) from " + table)) {
			row.next();
			return row.getLong(1);
		}
	}

	/** The same without the commit. */
	static void put(Connection connection, ArchiveFile archive) throws SQLException, IOException {
		if (archive.variant() == Variant.PUBLIC) {
			throw new ArchiveRefusal(
					"This is the public archive: it lacks what a database needs. Restore the whole one.");
		}
		ArchiveRestore restore = new ArchiveRestore(connection, archive);
		restore.requireKnown();
		requireEmpty(connection);
		for (ArchivedTable table : restore.tables.all()) {
			restore.table(table);
		}
		RecordCopy.restore(connection, new BufferedReader(new StringReader(archive.text(ArchiveFile.RECORD))));
		restore.check();
	}

	/** An archive of a later version may hold what this one would lose. */
	private void requireKnown() throws IOException {
		Map<String, Map<String, String>> schema = this.archive.schema();
		for (Map.Entry<String, Map<String, String>> one : schema.entrySet()) {
			ArchivedTable table = this.tables.all()
				.stream()
				.filter((known) -> known.name().equals(one.getKey()))
				.findFirst()
				.orElseThrow(() -> new ArchiveRefusal("The archive has a table '" + one.getKey()
						+ "' that this version of Rimebook does not know. Take a newer one."));
			for (String column : one.getValue().keySet()) {
				if (!table.columns(Variant.WHOLE).contains(column)) {
					throw new ArchiveRefusal("The archive has a column '" + one.getKey() + "." + column
							+ "' that this version of Rimebook does not know. Take a newer one.");
				}
			}
		}
	}

	private void table(ArchivedTable table) throws SQLException, IOException {
		Map<String, String> kinds = this.archive.schema().getOrDefault(table.name(), Map.of());
		List<TableRow> rows = inOrder(table, this.archive.rows(table.name()));
		if (rows.isEmpty()) {
			return;
		}
		List<String> columns = new ArrayList<>(kinds.keySet());
		columns.addAll(table.parts().restored().keySet());
		String insert = "insert into " + table.name() + " (" + String.join(", ", columns) + ") values ("
				+ String.join(", ", columns.stream().map((column) -> "?").toList()) + ")";
		List<RowText> types = types(table, columns);
		try (PreparedStatement statement = this.connection.prepareStatement(insert)) {
			int batched = 0;
			for (TableRow row : rows) {
				TableRow whole = whole(table, row);
				for (int i = 0; i < columns.size(); i++) {
					types.get(i).set(statement, i + 1, whole.get(columns.get(i)));
				}
				statement.addBatch();
				batched++;
				if (batched % AT_ONCE == 0) {
					statement.executeBatch();
				}
			}
			statement.executeBatch();
		}
	}

	private List<RowText> types(ArchivedTable table, List<String> columns) throws SQLException {
		try (Statement statement = this.connection.createStatement();
				ResultSet none = statement
					.executeQuery("select " + String.join(", ", columns) + " from " + table.name() + " where 1 = 0")) {
			return RowText.of(none.getMetaData());
		}
	}

	private TableRow whole(ArchivedTable table, TableRow row) throws IOException {
		TableRow whole = new TableRow();
		whole.putAll(row);
		whole.putAll(table.parts().restored());
		String file = table.parts().file();
		if (file != null) {
			whole.put(file, this.archive.text(String.valueOf(row.get(file))));
		}
		return whole;
	}

	/** A row that names another of its table comes after that one. */
	private static List<TableRow> inOrder(ArchivedTable table, List<TableRow> rows) {
		String refers = table.parts().refers();
		if (refers == null) {
			return rows;
		}
		List<TableRow> ordered = new ArrayList<>();
		Set<@Nullable Object> there = new HashSet<>();
		List<TableRow> left = new ArrayList<>(rows);
		while (!left.isEmpty()) {
			List<TableRow> next = left.stream()
				.filter((row) -> row.get(refers) == null || there.contains(row.get(refers)))
				.toList();
			if (next.isEmpty()) {
				throw new ArchiveRefusal("Rows of the table '" + table.name() + "' name others that are not there.");
			}
			ordered.addAll(next);
			next.forEach((row) -> there.add(row.get("id")));
			left.removeIf((row) -> there.contains(row.get("id")));
		}
		return ordered;
	}

	/** What is in the database then has to be what its record tells. */
	private void check() throws SQLException {
		RecordFinding chain = ChainCheck.check(this.connection);
		if (!chain.isWhole()) {
			throw new ArchiveRefusal(chain.sentence());
		}
		StoredCheck.Finding stored = StoredCheck.check(this.connection);
		if (!stored.agrees()) {
			throw new ArchiveRefusal(stored.sentence() + " " + String.join(" ", stored.shown()));
		}
	}

}
