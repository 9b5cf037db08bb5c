package rimebook.archive;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import javax.sql.DataSource;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** A table or a column that no module says anything about would be lost in silence. */
@WholeApplication
class ArchivedTablesIntegrationTests {

	@Autowired
	private DataSource database;

	private final ArchivedTables declared = ArchivedTables.declared();

	@Test
	void everyTableAndColumnOfTheDatabaseIsDeclared() throws SQLException {
		Map<String, Set<String>> said = new TreeMap<>();
		this.declared.all().forEach((table) -> said.put(table.name(), new TreeSet<>(table.columns())));
		this.declared.leftOut().keySet().forEach((table) -> said.put(table, Set.of()));
		Map<String, Set<String>> there = columns();
		this.declared.leftOut().keySet().forEach((table) -> there.replace(table, Set.of()));
		assertThat(said).isEqualTo(there).hasSizeGreaterThan(30);
	}

	@Test
	void noColumnIsDeclaredTwice() {
		assertThat(this.declared.all()).allSatisfy((table) -> assertThat(table.columns()).doesNotHaveDuplicates());
	}

	/** Without those of the keys no row could be told apart or put in. */
	@Test
	void everyKeyIsTheDatabases() throws SQLException {
		for (ArchivedTable table : this.declared.all()) {
			assertThat(primaryKey(table.name())).as(table.name()).containsExactlyInAnyOrderElementsOf(table.key());
		}
	}

	@Test
	void everyTableComesAfterThoseItRefersTo() throws SQLException {
		Set<String> before = new LinkedHashSet<>();
		for (ArchivedTable table : this.declared.all()) {
			for (Map.Entry<String, String> parent : parents(table.name()).entrySet()) {
				if (parent.getValue().equals(table.name())) {
					assertThat(table.parts().refers() + table.key()).as(table.name()).contains(parent.getKey());
				}
				else {
					assertThat(before).as(table.name()).contains(parent.getValue());
				}
			}
			before.add(table.name());
		}
	}

	/** What is not null must have a value when it never leaves. */
	@Test
	void whatNeverLeavesBecomesSomethingElse() throws SQLException {
		Set<String> mayBeNull = mayBeNull();
		assertThat(this.declared.all()).allSatisfy((table) -> {
			assertThat(table.parts().never()).containsAll(table.parts().restored().keySet());
			assertThat(table.parts().never()).allMatch((column) -> table.parts().restored().containsKey(column)
					|| mayBeNull.contains(table.name() + " " + column));
		});
		assertThat(this.declared.table("person").parts().never()).contains("password_hash");
		assertThat(this.declared.leftOut()).containsKeys("former_password", "seat_code", "crew_key");
	}

	private Set<String> mayBeNull() throws SQLException {
		Set<String> columns = new TreeSet<>();
		try (Connection connection = this.database.getConnection();
				ResultSet row = connection.getMetaData().getColumns(null, connection.getSchema(), "%", "%")) {
			while (row.next()) {
				if (row.getInt("NULLABLE") == DatabaseMetaData.columnNullable) {
					columns.add(lower(row.getString("TABLE_NAME")) + " " + lower(row.getString("COLUMN_NAME")));
				}
			}
		}
		return columns;
	}

	private Map<String, Set<String>> columns() throws SQLException {
		Map<String, Set<String>> columns = new TreeMap<>();
		try (Connection connection = this.database.getConnection();
				ResultSet row = connection.getMetaData().getColumns(null, connection.getSchema(), "%", "%")) {
			while (row.next()) {
				columns.computeIfAbsent(lower(row.getString("TABLE_NAME")), (table) -> new TreeSet<>())
					.add(lower(row.getString("COLUMN_NAME")));
			}
		}
		columns.keySet().removeIf((table) -> table.endsWith("_pkey") || !isTable(table));
		return columns;
	}

	private boolean isTable(String name) {
		try (Connection connection = this.database.getConnection();
				ResultSet row = connection.getMetaData()
					.getTables(null, connection.getSchema(), "%", new String[] { "TABLE", "BASE TABLE" })) {
			List<String> tables = new ArrayList<>();
			while (row.next()) {
				tables.add(lower(row.getString("TABLE_NAME")));
			}
			return tables.contains(name);
		}
		catch (SQLException ex) {
			throw new IllegalStateException(ex);
		}
	}

	private List<String> primaryKey(String table) throws SQLException {
		List<String> key = new ArrayList<>();
		try (Connection connection = this.database.getConnection();
				ResultSet row = connection.getMetaData()
					.getPrimaryKeys(null, connection.getSchema(), stored(connection, table))) {
			while (row.next()) {
				key.add(lower(row.getString("COLUMN_NAME")));
			}
		}
		return key;
	}

	private Map<String, String> parents(String table) throws SQLException {
		Map<String, String> parents = new TreeMap<>();
		try (Connection connection = this.database.getConnection();
				ResultSet row = connection.getMetaData()
					.getImportedKeys(null, connection.getSchema(), stored(connection, table))) {
			while (row.next()) {
				parents.put(lower(row.getString("FKCOLUMN_NAME")), lower(row.getString("PKTABLE_NAME")));
			}
		}
		return parents;
	}

	private static String stored(Connection connection, String table) throws SQLException {
		return connection.getMetaData().storesUpperCaseIdentifiers() ? table.toUpperCase(Locale.ROOT) : table;
	}

	private static String lower(String name) {
		return name.toLowerCase(Locale.ROOT);
	}

}
