package rimebook.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.archive.ArchivedTable.Belonging;

/**
 * The tables of all modules in the order in which their rows can be put in, each after
 * those that it refers to.
 */
final class ArchivedTables {

	/** The modules that keep something, in that order. */
	private static final List<String> MODULES = List.of("accounts", "competition", "entries", "rosters", "draw",
			"panels", "performances", "clock", "remarks", "placement", "paper", "points", "results", "protests",
			"rulings", "timetable", "music", "fees", "arrival", "letters", "documents", "audit", "standby", "web");

	private static final ArchivedTables DECLARED = new ArchivedTables();

	private final Map<String, ArchivedTable> tables = new LinkedHashMap<>();

	private final Map<String, String> leftOut = new LinkedHashMap<>();

	private ArchivedTables() {
		MODULES.forEach((module) -> new Declarations(module).read());
	}

	/** Those that this version of the service has. */
	static ArchivedTables declared() {
		return DECLARED;
	}

	/** Every table in its order. */
	List<ArchivedTable> all() {
		return List.copyOf(this.tables.values());
	}

	/** Every table that no archive has, and why. */
	Map<String, String> leftOut() {
		return Map.copyOf(this.leftOut);
	}

	ArchivedTable table(String name) {
		return Objects.requireNonNull(this.tables.get(name), () -> "No module declares the table " + name);
	}

	/** A column of the rows that are the competition's, in SQL. */
	String select(String columns, ArchivedTable table, UUID competition) {
		return "select " + columns + " from " + table.name() + " where "
				+ table.belongs().condition(table.key().get(0), this, competition);
	}

	/** What one module declares. */
	private final class Declarations {

		private final String module;

		private @Nullable String name;

		private @Nullable Belonging belongs;

		private List<String> key = List.of("id");

		private final List<String> columns = new ArrayList<>();

		private final Set<String> closed = new LinkedHashSet<>();

		private final Set<String> never = new LinkedHashSet<>();

		private final Map<String, String> restored = new LinkedHashMap<>();

		private @Nullable String file;

		private final Set<String> hidden = new LinkedHashSet<>();

		private @Nullable String refers;

		Declarations(String module) {
			this.module = module;
		}

		void read() {
			text().lines()
				.map(String::strip)
				.filter((line) -> !line.isEmpty() && !line.startsWith("#"))
				.forEach(this::line);
			finish();
		}

		private String text() {
			String resource = "/archive/tables/" + this.module + ".tables";
			try (InputStream in = ArchivedTables.class.getResourceAsStream(resource)) {
				return new String(Objects.requireNonNull(in, resource).readAllBytes(), StandardCharsets.UTF_8);
			}
			catch (IOException ex) {
				throw new UncheckedIOException(ex);
			}
		}

		private void line(String line) {
			String word = line.split(" ", 2)[0];
			String rest = line.substring(word.length()).strip();
			List<String> words = List.of(rest.split(" +"));
			switch (word) {
				case "table" -> begin(rest);
				case "left-out" -> ArchivedTables.this.leftOut.put(rest.split(":", 2)[0], rest.split(": ", 2)[1]);
				case "belongs" -> this.belongs = belonging(words);
				case "key" -> this.key = words;
				case "open" -> this.columns.addAll(words);
				case "personal", "inside" -> add(words, this.closed);
				case "never" -> add(words, this.never);
				case "restored" -> words.forEach((one) -> this.restored.put(one.substring(0, one.indexOf('=')),
						one.substring(one.indexOf('=') + 1)));
				case "file" -> this.file = rest;
				case "hidden" -> this.hidden.addAll(words);
				case "refers" -> this.refers = rest;
				default -> throw new IllegalStateException(this.module + ".tables: " + line);
			}
		}

		private void add(List<String> words, Set<String> kind) {
			this.columns.addAll(words);
			kind.addAll(words);
		}

		private static Belonging belonging(List<String> words) {
			return switch (words.get(0)) {
				case "root" -> new Belonging.Root();
				case "all" -> new Belonging.All();
				case "used" ->
					new Belonging.UsedBy(words.stream().skip(2).map((user) -> user.replace(",", "")).toList());
				default -> new Belonging.Of(words.get(0),
						words.stream().skip(2).map((table) -> table.replace(",", "")).toList());
			};
		}

		private void begin(String next) {
			finish();
			this.name = next;
			this.belongs = null;
			this.key = List.of("id");
			this.columns.clear();
			this.closed.clear();
			this.never.clear();
			this.restored.clear();
			this.file = null;
			this.hidden.clear();
			this.refers = null;
		}

		private void finish() {
			if (this.name != null) {
				ArchivedTables.this.tables.put(this.name,
						new ArchivedTable(this.name, Objects.requireNonNull(this.belongs, this.name), this.key,
								this.columns, new ArchivedTable.Parts(this.closed, this.never, this.restored, this.file,
										this.hidden, this.refers)));
				this.name = null;
			}
		}

	}

}
