package rimebook.archive;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * The values of a row as JSON has them, the same from every database, and back. A moment
 * is UTC with three digits of seconds.
 */
enum RowText {

	/** An identity: {@code "0199…"}. */
	ID {

		@Override
		@Nullable Object read(ResultSet row, int column) throws SQLException {
			Object id = row.getObject(column);
			return (id != null) ? id.toString() : null;
		}

		@Override
		Object value(Object json) {
			return UUID.fromString(json.toString());
		}

	},

	/** A text. */
	TEXT {

		@Override
		@Nullable Object read(ResultSet row, int column) throws SQLException {
			return row.getString(column);
		}

		@Override
		Object value(Object json) {
			return json.toString();
		}

	},

	/** A whole number. */
	NUMBER {

		@Override
		@Nullable Object read(ResultSet row, int column) throws SQLException {
			long number = row.getLong(column);
			return row.wasNull() ? null : number;
		}

		@Override
		Object value(Object json) {
			return Long.valueOf(json.toString());
		}

	},

	/** True or false. */
	TRUTH {

		@Override
		@Nullable Object read(ResultSet row, int column) throws SQLException {
			boolean truth = row.getBoolean(column);
			return row.wasNull() ? null : truth;
		}

		@Override
		Object value(Object json) {
			return Boolean.valueOf(json.toString());
		}

	},

	/** A moment: {@code "2026-11-29T16:40:00.000Z"}. */
	MOMENT {

		@Override
		@Nullable Object read(ResultSet row, int column) throws SQLException {
			OffsetDateTime moment = row.getObject(column, OffsetDateTime.class);
			return (moment != null) ? MOMENTS.format(moment.toInstant()) : null;
		}

		@Override
		Object value(Object json) {
			return OffsetDateTime.ofInstant(Instant.parse(json.toString()), ZoneOffset.UTC);
		}

	},

	/** A day: {@code "2026-11-29"}. */
	DAY {

		@Override
		@Nullable Object read(ResultSet row, int column) throws SQLException {
			LocalDate day = row.getObject(column, LocalDate.class);
			return (day != null) ? day.toString() : null;
		}

		@Override
		Object value(Object json) {
			return LocalDate.parse(json.toString());
		}

	};

	/** How moments are written. */
	static final DateTimeFormatter MOMENTS = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
		.withZone(ZoneOffset.UTC);

	private static final Map<String, RowText> TYPES = Map.ofEntries(Map.entry("uuid", ID), Map.entry("bool", TRUTH),
			Map.entry("boolean", TRUTH), Map.entry("int4", NUMBER), Map.entry("int8", NUMBER),
			Map.entry("integer", NUMBER), Map.entry("bigint", NUMBER), Map.entry("date", DAY),
			Map.entry("timestamptz", MOMENT), Map.entry("timestamp with time zone", MOMENT), Map.entry("varchar", TEXT),
			Map.entry("character varying", TEXT));

	abstract @Nullable Object read(ResultSet row, int column) throws SQLException;

	abstract Object value(Object json);

	/** What the columns of a result are, in their order. */
	static List<RowText> of(ResultSetMetaData columns) throws SQLException {
		RowText[] types = new RowText[columns.getColumnCount()];
		for (int column = 1; column <= types.length; column++) {
			String name = columns.getColumnTypeName(column).toLowerCase(Locale.ROOT).split("\\(", 2)[0];
			RowText type = TYPES.get(name);
			if (type == null) {
				throw new IllegalStateException("No archive has columns of the type " + name);
			}
			types[column - 1] = type;
		}
		return List.of(types);
	}

	/** One row by the names of its columns. */
	static TableRow row(ResultSet row, List<String> columns, List<RowText> types) throws SQLException {
		TableRow values = new TableRow();
		for (int column = 0; column < columns.size(); column++) {
			values.put(columns.get(column), types.get(column).read(row, column + 1));
		}
		return values;
	}

	/** Give a value to a statement. */
	void set(PreparedStatement statement, int parameter, @Nullable Object json) throws SQLException {
		if (json == null) {
			statement.setObject(parameter, null);
		}
		else {
			statement.setObject(parameter, value(json));
		}
	}

	/** What the archive calls it. */
	String word() {
		return name().toLowerCase(Locale.ROOT);
	}

}
