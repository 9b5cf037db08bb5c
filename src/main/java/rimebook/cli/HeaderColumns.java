package rimebook.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The columns of a file by name, in whatever order they stand; case and repeated spaces
 * do not matter.
 */
final class HeaderColumns {

	private static final String ENTRY = "entry";

	/** Columns with figures that people keep beside the marks and that are nobody's. */
	private static final Set<String> ASIDE = Set.of("start", "start number", "start_number", "number", "place", "rank",
			"total", "year");

	private static final Pattern JUDGE_LIKE = Pattern.compile("j[^a-z]?\\d.*|.*judge.*");

	private static final Pattern FIGURE = Pattern.compile("[+-]?\\d.*");

	private final CsvFile file;

	private final String expected;

	private final boolean hasJudges;

	private final Map<String, Integer> used = new LinkedHashMap<>();

	private final List<String> unused = new ArrayList<>();

	/**
	 * Sort the columns. One that is not understood is left aside where the file has no
	 * judges, it holds no figures, or its name says what they are; any other might be a
	 * judge's whose name was mistyped, and places made without it would be wrong.
	 * @param used names of the columns to use, in lower case, beside {@code entry}
	 * @param expected how the header should be, for messages
	 * @throws InputException where a used column is there twice, {@code entry} is not, or
	 * a column with figures is not understood
	 */
	HeaderColumns(CsvFile file, Pattern used, String expected) {
		this.file = file;
		this.expected = expected;
		this.hasJudges = used.matcher("j1").matches();
		for (int i = 0; i < file.header().size(); i++) {
			String name = file.header().get(i).toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
			if (!name.equals(ENTRY) && !used.matcher(name).matches()) {
				leaveAside(i, name);
			}
			else if (this.used.putIfAbsent(name, i) != null) {
				throw fault(i, "column '" + file.header().get(i) + "' is there twice");
			}
		}
		if (!this.used.containsKey(ENTRY)) {
			throw fault(0, "there is no column 'entry'");
		}
	}

	private void leaveAside(int column, String name) {
		boolean harmless = !this.hasJudges || ASIDE.contains(name) || (!JUDGE_LIKE.matcher(name).matches()
				&& this.file.rows().stream().noneMatch((row) -> FIGURE.matcher(row.field(column)).matches()));
		if (!harmless) {
			throw fault(column, "column '" + this.file.header().get(column)
					+ "' is not understood and may be a judge's; take it out or mend its name");
		}
		this.unused.add(this.file.header().get(column));
	}

	int entry() {
		return required(ENTRY);
	}

	/** Return where a column is that must be there. */
	int required(String name) {
		return find(name).orElseThrow(() -> fault(0, "there is no column '" + name + "'"));
	}

	Optional<Integer> find(String name) {
		return Optional.ofNullable(this.used.get(name));
	}

	boolean hasAll(Collection<String> names) {
		return this.used.keySet().containsAll(names);
	}

	boolean hasAny(Collection<String> names) {
		return names.stream().anyMatch(this.used::containsKey);
	}

	List<Integer> indexes(List<String> names) {
		return names.stream().map(this.used::get).toList();
	}

	/**
	 * Refuse columns out of sequence.
	 * @param names the columns in use
	 * @param next those that would come next, of which one at least is missing
	 */
	void nothingBeside(Collection<String> names, List<String> next) {
		String missing = next.stream().filter((name) -> !this.used.containsKey(name)).findFirst().orElseThrow();
		this.used.forEach((name, index) -> {
			if (!name.equals(ENTRY) && !names.contains(name)) {
				throw fault(index, "column '" + this.file.header().get(index) + "' does not fit: there is no column '"
						+ missing.replace('j', 'J') + "'");
			}
		});
	}

	InputException fault(int column, String sentence) {
		return this.file.fault(this.file.headerLine(), column, sentence + "; expected " + this.expected);
	}

	List<String> notes() {
		if (this.unused.isEmpty()) {
			return List.of();
		}
		return List.of(this.file.name() + ": not used: column" + ((this.unused.size() == 1) ? " " : "s ")
				+ String.join(", ", this.unused.stream().map((name) -> "'" + name + "'").toList()));
	}

}
