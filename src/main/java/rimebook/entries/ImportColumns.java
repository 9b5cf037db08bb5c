package rimebook.entries;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What the columns of an import file may be called, and which sign stands between them:
 * spreadsheets write commas, semicolons or tabs, depending on the country they are set
 * to.
 */
final class ImportColumns {

	static final List<String> NAMES = List.of("event", "club", "town", "team", "spoken_as");

	static final String HEADER = String.join(",", NAMES);

	private static final Map<String, List<String>> ALSO = Map.of("event", List.of("category", "level", "division"),
			"club", List.of("club_name", "organisation", "organization"), "town", List.of("city", "place", "home_town"),
			"team", List.of("team_name"), "spoken_as", List.of("spoken_name", "pronunciation", "announced_as"));

	private static final Map<String, String> KNOWN = known();

	private static final List<Character> SEPARATORS = List.of(',', ';', '\t', '|');

	private static final String SEPARATOR_LINE = "sep=";

	private ImportColumns() {
	}

	private static Map<String, String> known() {
		Map<String, String> known = new HashMap<>();
		NAMES.forEach((name) -> known.put(name, name));
		ALSO.forEach((name, others) -> others.forEach((other) -> known.put(other, name)));
		return known;
	}

	/** The name by which a column is known here, or as it was written if by none. */
	static String nameOf(String written) {
		String plain = written.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "_");
		return KNOWN.getOrDefault(plain, written.strip().toLowerCase(Locale.ROOT));
	}

	/**
	 * The sign that parts the first line with anything in it into the most known columns.
	 */
	static char separatorOf(String text) {
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

	private static long knownIn(String header, char separator) {
		return Stream.of(header.split(Pattern.quote(String.valueOf(separator))))
			.map((name) -> nameOf(name.replace("\"", "")))
			.filter(NAMES::contains)
			.count();
	}

}
