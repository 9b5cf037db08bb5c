package rimebook.tables;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What the columns of a table may be called, and which sign stands between them:
 * spreadsheets write commas, semicolons or tabs, depending on the country they are set
 * to.
 */
public final class TableColumns {

	private static final List<Character> SEPARATORS = List.of(',', ';', '\t', '|');

	private static final String SEPARATOR_LINE = "sep=";

	private final List<String> names;

	private final int needed;

	private final Map<String, String> known = new HashMap<>();

	/**
	 * Columns by their names.
	 * @param names in the order in which they are listed for people
	 * @param needed how many of them, from the first, a table cannot do without
	 * @param also other names for some of them, in small letters, blanks as underscores
	 */
	public TableColumns(List<String> names, int needed, Map<String, List<String>> also) {
		this.names = List.copyOf(names);
		this.needed = needed;
		names.forEach((name) -> this.known.put(name, name));
		also.forEach((name, others) -> others.forEach((other) -> this.known.put(other, name)));
	}

	/** The names in their order. */
	public List<String> names() {
		return this.names;
	}

	/** The first line of such a table. */
	public String header() {
		return String.join(",", this.names);
	}

	List<String> needed() {
		return this.names.subList(0, this.needed);
	}

	/** The name by which a column is known here, or as it was written if by none. */
	String nameOf(String written) {
		String plain = written.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "_");
		return this.known.getOrDefault(plain, written.strip().toLowerCase(Locale.ROOT));
	}

	/**
	 * The sign that parts the first line with anything in it into the most known columns.
	 */
	char separatorOf(String text) {
		String first = text.lines().filter((line) -> !line.isBlank()).findFirst().orElse("");
		if (isSeparatorLine(first)) {
			return first.charAt(SEPARATOR_LINE.length());
		}
		return SEPARATORS.stream().max(Comparator.comparingLong((sign) -> knownIn(first, sign))).orElse(',');
	}

	/** Whether a line says nothing but which sign parts the columns. */
	static boolean isSeparatorLine(String line) {
		return line.length() == SEPARATOR_LINE.length() + 1 && line.startsWith(SEPARATOR_LINE);
	}

	private long knownIn(String header, char separator) {
		return Stream.of(header.split(Pattern.quote(String.valueOf(separator))))
			.map((name) -> nameOf(name.replace("\"", "")))
			.filter(this.names::contains)
			.count();
	}

}
