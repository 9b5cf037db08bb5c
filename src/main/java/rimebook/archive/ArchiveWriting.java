package rimebook.archive;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;

import tools.jackson.databind.json.JsonMapper;

import rimebook.audit.RecordCopy;
import rimebook.audit.RecordVerification;

/**
 * Writes the archive of a competition. Needs a connection and nothing else; what is
 * changed meanwhile is not seen, since everything is read in one transaction as it was at
 * its beginning.
 */
public final class ArchiveWriting {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private final ArchivedTables tables = ArchivedTables.declared();

	private final Connection connection;

	private final Order order;

	private final UUID competition;

	private final SealedZip zip;

	private final Set<String> here = new HashSet<>();

	private final Map<String, List<TableRow>> rows = new LinkedHashMap<>();

	private final Map<String, String> bodies = new HashMap<>();

	private final Progress progress;

	private int done;

	private ArchiveWriting(Connection connection, Order order, UUID competition, SealedZip zip, Progress progress) {
		this.connection = connection;
		this.order = order;
		this.competition = competition;
		this.zip = zip;
		this.progress = progress;
	}

	/**
	 * Write it. The connection is rolled back and left open.
	 * @param target the file; another one of that name is replaced once this is whole
	 * @param progress is told how far it is
	 * @throws ArchiveRefusal if there is no such competition
	 * @throws IOException if the file cannot be written; then there is none
	 */
	public static void write(Connection connection, Order order, Path target, Progress progress)
			throws SQLException, IOException {
		boolean commits = connection.getAutoCommit();
		int isolation = connection.getTransactionIsolation();
		connection.setAutoCommit(false);
		ArchiveDatabase.readOneMoment(connection);
		try (SealedZip zip = SealedZip.create(target)) {
			new ArchiveWriting(connection, order, competition(connection, order.competition()), zip, progress).write();
		}
		finally {
			ArchiveDatabase.rollBack(connection, commits, isolation);
		}
	}

	/**
	 * The identity of a competition that is named by it or by its name in addresses.
	 * @throws ArchiveRefusal if there is none
	 */
	static UUID competition(Connection connection, String name) throws SQLException {
		List<String> known = new ArrayList<>();
		try (Statement statement = connection.createStatement();
				ResultSet row = statement.executeQuery("select id, slug from competition order by slug")) {
			while (row.next()) {
				if (name.equals(row.getString(1)) || name.equals(row.getString(2))) {
					return UUID.fromString(row.getString(1));
				}
				known.add(row.getString(2));
			}
		}
		throw new ArchiveRefusal("There is no competition '" + name + "' in this database. "
				+ (known.isEmpty() ? "There is none at all." : "There are: " + String.join(", ", known) + "."));
	}

	private void write() throws SQLException, IOException {
		Map<String, Map<String, String>> schema = new LinkedHashMap<>();
		for (ArchivedTable table : this.tables.all()) {
			if (table.isIn(this.order.variant())) {
				schema.put(table.name(), table(table));
			}
			step();
		}
		this.zip.add(ArchiveFile.SCHEMA, lines(schema));
		RecordVerification.Head head = record();
		step();
		ResultFiles.of(Standings.of(this::rows, this::body), this.order.variant(), this.zip::add);
		step();
		for (ArchivedDocument document : this.order.documents()) {
			this.zip.add("documents/" + document.name(), document.content().bytes());
			step();
		}
		this.zip.add(ArchiveFile.ABOUT, about(head));
		this.zip.finish();
		step();
	}

	private void step() {
		this.done++;
		this.progress.at(this.done, this.tables.all().size() + this.order.documents().size() + 3);
	}

	private String about(RecordVerification.Head head) {
		Map<String, Object> about = new LinkedHashMap<>();
		about.put("layout", ArchiveFile.LAYOUT);
		about.put("edition", ArchiveFile.EDITION);
		about.put("public", this.order.variant() == Variant.PUBLIC);
		about.put("competition", this.competition.toString());
		about.put("recordLines", head.lines());
		about.put("recordHead", head.digest());
		about.put("madeAt", RowText.MOMENTS.format(this.order.now()));
		return lines(about);
	}

	/** One member a line, so that two archives are compared easily. */
	private static String lines(Map<String, ?> members) {
		List<String> lines = members.entrySet()
			.stream()
			.map((member) -> JSON.writeValueAsString(member.getKey()) + ":"
					+ JSON.writeValueAsString(member.getValue()))
			.toList();
		return "{\n" + String.join(",\n", lines) + "\n}\n";
	}

	/** Write the rows of a table and tell what its columns are. */
	private Map<String, String> table(ArchivedTable table) throws SQLException, IOException {
		List<String> columns = table.columns(this.order.variant());
		String file = table.parts().file();
		Map<String, String> types = new LinkedHashMap<>();
		List<TableRow> read = new ArrayList<>();
		List<String> inRow = columns.stream().filter((column) -> !column.equals(file)).toList();
		try (Statement statement = this.connection.createStatement();
				ResultSet row = statement
					.executeQuery(this.tables.select(String.join(", ", inRow), table, this.competition))) {
			List<RowText> kinds = RowText.of(row.getMetaData());
			for (int i = 0; i < inRow.size(); i++) {
				types.put(inRow.get(i), kinds.get(i).word());
			}
			while (row.next()) {
				read.add(RowText.row(row, inRow, kinds));
			}
		}
		read.sort(Comparator.comparing((row) -> sortKey(table, row)));
		if (file != null) {
			types.put(file, "file");
			writeFiles(table, file, read);
		}
		if (table.columns().contains("id")) {
			read.forEach((row) -> this.here.add(String.valueOf(row.get("id"))));
		}
		write(table.name(), List.copyOf(types.keySet()), read);
		this.rows.put(table.name(), read);
		return types;
	}

	private static String sortKey(ArchivedTable table, TableRow row) {
		StringBuilder key = new StringBuilder();
		for (String column : table.key()) {
			Object value = row.get(column);
			key.append((value instanceof Long number) ? "%019d".formatted(number) : value).append(' ');
		}
		return key.toString();
	}

	private void writeFiles(ArchivedTable table, String column, List<TableRow> rows) throws SQLException, IOException {
		for (TableRow row : rows) {
			String id = String.valueOf(row.get("id"));
			String text = text(table, column, id);
			String shown = (this.order.variant() == Variant.WHOLE) ? text : OpenText.of(text, table.parts().hidden());
			String file = shown.equals(text) ? table.fileOf(row) : table.openFileOf(row);
			this.zip.add(file, shown);
			this.bodies.put(file, id);
			row.put(column, file);
		}
	}

	private List<TableRow> rows(String table) {
		return Objects.requireNonNull(this.rows.get(table), table);
	}

	private String text(ArchivedTable table, String column, String id) throws SQLException {
		try (PreparedStatement text = this.connection
			.prepareStatement("select " + column + " from " + table.name() + " where id = ?")) {
			text.setObject(1, UUID.fromString(id));
			try (ResultSet one = text.executeQuery()) {
				one.next();
				return one.getString(1);
			}
		}
	}

	/** A published version once more; all of them would be much to keep in memory. */
	private String body(String file) {
		ArchivedTable versions = this.tables.table("result_version");
		try {
			return text(versions, "body", Objects.requireNonNull(this.bodies.get(file), file));
		}
		catch (SQLException ex) {
			throw new IllegalStateException("A version that was there cannot be read again", ex);
		}
	}

	private void write(String table, List<String> columns, List<TableRow> rows) throws IOException {
		StringBuilder json = new StringBuilder("[");
		StringBuilder csv = new StringBuilder(String.join(",", columns)).append("\r\n");
		String between = "\n";
		for (TableRow row : rows) {
			json.append(between).append(JSON.writeValueAsString(row));
			between = ",\n";
			csv.append(CsvLine.of(columns.stream().map(row::get).toList()));
		}
		this.zip.add("data/" + table + ".json", json.append("\n]\n").toString());
		this.zip.add("data/" + table + ".csv", csv.toString());
	}

	/**
	 * A line is about something elsewhere if its subject is a row of this database that
	 * is not in the archive. What belongs to nothing that is left, and what concerns the
	 * whole house, comes along.
	 */
	private RecordVerification.Head record() throws SQLException, IOException {
		Set<String> elsewhere = new HashSet<>();
		for (ArchivedTable table : this.tables.all()) {
			if (table.columns().contains("id")) {
				try (Statement statement = this.connection.createStatement();
						ResultSet row = statement.executeQuery("select id from " + table.name())) {
					while (row.next()) {
						elsewhere.add(row.getString(1));
					}
				}
			}
		}
		elsewhere.removeAll(this.here);
		boolean all = this.order.variant() == Variant.PUBLIC;
		ByteArrayOutputStream lines = new ByteArrayOutputStream();
		RecordVerification.Head head = RecordCopy.write(this.connection, lines,
				(subject) -> all || elsewhere.contains(subject));
		this.zip.add(ArchiveFile.RECORD, lines.toByteArray());
		return head;
	}

	/** Is told how far an archive is. */
	public interface Progress {

		/** Nobody is told. */
		Progress UNSEEN = (done, all) -> {
		};

		/**
		 * Something more was written.
		 * @param done how many steps of all
		 */
		void at(int done, int all);

	}

	/**
	 * What is to be archived.
	 *
	 * @param competition its identity, or its name in addresses
	 * @param variant how much of it
	 * @param now when, which stands in the archive
	 * @param documents what other modules add
	 */
	public record Order(String competition, Variant variant, Instant now, List<ArchivedDocument> documents) {

		public Order {
			documents = List.copyOf(documents);
		}

	}

}
