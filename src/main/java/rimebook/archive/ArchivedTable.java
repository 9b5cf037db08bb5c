package rimebook.archive;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

/**
 * A table whose rows go into an archive, as its module declares it.
 *
 * @param name its name
 * @param belongs which rows are those of one competition
 * @param key the columns by which rows are told apart and sorted
 * @param columns all of them as they are named in the database
 * @param parts what is special about its columns
 */
record ArchivedTable(String name, Belonging belongs, List<String> key, List<String> columns, Parts parts) {

	ArchivedTable {
		key = List.copyOf(key);
		columns = List.copyOf(columns);
	}

	/** The columns that an archive holds; none where the public one lacks all. */
	List<String> columns(Variant variant) {
		return this.columns.stream()
			.filter((column) -> !this.parts.never().contains(column))
			.filter((column) -> variant == Variant.WHOLE || !this.parts.closed().contains(column))
			.toList();
	}

	/** Tell whether an archive of that variant has the table. */
	boolean isIn(Variant variant) {
		return columns(variant).containsAll(this.key);
	}

	/** Where the text of a column lies that has a file of its own. */
	String fileOf(TableRow row) {
		return "data/" + this.name + "/" + row.get("id") + ".json";
	}

	/** Where it lies without what the public variant lacks. */
	String openFileOf(TableRow row) {
		return "data/" + this.name + "/" + row.get("id") + ArchiveFile.WITHOUT_NAMES;
	}

	/**
	 * What is special about columns.
	 *
	 * @param closed columns that the public variant lacks
	 * @param never columns that no archive holds
	 * @param restored what these become in a restored database
	 * @param file the column whose text is a file of its own, {@code null} for none
	 * @param hidden the members of that text that the public variant lacks
	 * @param refers the column that names another row of the table, {@code null} for none
	 */
	record Parts(Set<String> closed, Set<String> never, Map<String, String> restored, @Nullable String file,
			Set<String> hidden, @Nullable String refers) {

		Parts {
			closed = new LinkedHashSet<>(closed);
			never = new LinkedHashSet<>(never);
			restored = new LinkedHashMap<>(restored);
			hidden = new LinkedHashSet<>(hidden);
		}

	}

	/** Which rows are those of one competition. */
	sealed interface Belonging {

		/**
		 * The condition in SQL.
		 * @param key the column that other tables name
		 */
		String condition(String key, ArchivedTables tables, UUID competition);

		/** The competition itself. */
		record Root() implements Belonging {

			@Override
			public String condition(String key, ArchivedTables tables, UUID competition) {
				return key + " = cast('" + competition + "' as uuid)";
			}

		}

		/** All rows, whatever competition. */
		record All() implements Belonging {

			@Override
			public String condition(String key, ArchivedTables tables, UUID competition) {
				return "1 = 1";
			}

		}

		/** Rows that name a row of one of these tables. */
		record Of(String column, List<String> parents) implements Belonging {

			public Of {
				parents = List.copyOf(parents);
			}

			@Override
			public String condition(String key, ArchivedTables tables, UUID competition) {
				return this.parents.stream()
					.map(tables::table)
					.map((parent) -> tables.select(parent.key().get(0), parent, competition))
					.map((select) -> this.column + " in (" + select + ")")
					.collect(Collectors.joining(" or ", "(", ")"));
			}

		}

		/** Rows that a row of one of these tables names, each given as TABLE.COLUMN. */
		record UsedBy(List<String> users) implements Belonging {

			public UsedBy {
				users = List.copyOf(users);
			}

			@Override
			public String condition(String key, ArchivedTables tables, UUID competition) {
				return this.users.stream()
					.map((user) -> user.split("\\."))
					.map((user) -> tables.select(user[1], tables.table(user[0]), competition))
					.map((select) -> key + " in (" + select + ")")
					.collect(Collectors.joining(" or ", "(", ")"));
			}

		}

	}

}
