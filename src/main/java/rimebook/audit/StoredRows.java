package rimebook.audit;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

/**
 * Rows of one table that belong to a thing, with the columns of which lines attest
 * something. Columns are named one by one: one that is added to the table later does not
 * change what was attested before.
 *
 * @param table the table, which tells its rows from others of the same thing
 * @param of the condition with the identity of the thing as its parameter
 * @param columns in their order
 */
record StoredRows(String table, String of, List<Column> columns) {

	StoredRows {
		columns = List.copyOf(columns);
	}

	/**
	 * Name them.
	 * @param of the column that names the thing, or a whole condition with a parameter
	 * @param columns with a blank between them; a name that ends in {@code _at} or
	 * {@code @} is a time, one that ends in {@code ?} is true or false
	 */
	static StoredRows of(String table, String of, String columns) {
		return new StoredRows(table, of.contains("?") ? of : of + " = ?",
				Stream.of(columns.split(" ")).map(Column::of).toList());
	}

	/**
	 * One question for all rows of a thing, with a parameter for each table. Databases
	 * spell what is not text each in its own way, so what is no time is asked for as
	 * text. The first part names and types the columns for all of them: the question is
	 * read anew with each act, so it is kept short.
	 */
	static String question(List<StoredRows> tables) {
		int texts = most(tables, false);
		int times = most(tables, true);
		return IntStream.range(0, tables.size())
			.mapToObj((at) -> tables.get(at).part(at, texts, times))
			.collect(Collectors.joining(" union all "));
	}

	private static int most(List<StoredRows> tables, boolean times) {
		return tables.stream().mapToInt((table) -> table.columns(times).size()).max().orElse(0);
	}

	private List<Column> columns(boolean times) {
		return this.columns.stream().filter((column) -> column.isTime() == times).toList();
	}

	private String part(int at, int texts, int times) {
		List<String> asked = new ArrayList<>(List.of(String.valueOf(at)));
		ask(asked, columns(false), texts, (at == 0) ? Column.TEXT : "", "varchar(1)");
		ask(asked, columns(true), times, (at == 0) ? Column.TIME : "", "timestamp with time zone");
		return "select " + String.join(", ", asked) + " from " + this.table + " where " + this.of;
	}

	private static void ask(List<String> asked, List<Column> columns, int most, String label, String type) {
		for (int at = 0; at < most; at++) {
			String nothing = label.isEmpty() ? "null" : "cast(null as " + type + ")";
			String what = (at < columns.size()) ? columns.get(at).question() : nothing;
			asked.add(label.isEmpty() ? what : what + " as " + label + at);
		}
	}

	/** The digest of a row of this table in the answer to {@link #question}. */
	String digest(ResultSet row) throws SQLException {
		List<String> fields = new ArrayList<>(List.of(this.table));
		int texts = 0;
		int times = 0;
		for (Column column : this.columns) {
			fields.add(column.isTime() ? time(row.getObject(Column.TIME + times, OffsetDateTime.class))
					: text(row.getString(Column.TEXT + texts)));
			times += column.isTime() ? 1 : 0;
			texts += column.isTime() ? 0 : 1;
		}
		return ChainDigest.of(fields.toArray(String[]::new));
	}

	private static String time(@Nullable OffsetDateTime time) {
		return (time != null) ? ChainDigest.time(time.toInstant()) : "";
	}

	private static String text(@Nullable String text) {
		return (text != null) ? text : "";
	}

	/**
	 * A column.
	 *
	 * @param isTime whether it is a time
	 * @param isTruth whether it is true or false
	 */
	record Column(String name, boolean isTime, boolean isTruth) {

		private static final String TEXT = "text_";

		private static final String TIME = "time_";

		static Column of(String named) {
			String name = named.replaceAll("[@?]$", "");
			return new Column(name, name.endsWith("_at") || named.endsWith("@"), named.endsWith("?"));
		}

		private String question() {
			if (this.isTime) {
				return this.name;
			}
			return this.isTruth ? "case when " + this.name + " then 'yes' else 'no' end"
					: "cast(" + this.name + " as varchar)";
		}

	}

}
