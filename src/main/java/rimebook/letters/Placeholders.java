package rimebook.letters;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

/**
 * Places in a text that each letter fills in: a name in square brackets. What is filled
 * in is never looked at again, so a team may be called anything.
 */
final class Placeholders {

	/** What the modules tell, line by line. */
	static final String FACTS = "facts";

	/**
	 * A link that opens the team's page without a password, made when the letter goes.
	 */
	static final String LINK = "personal-link";

	/** All that may stand in a text. */
	static final List<String> KNOWN = List.of("recipient", "team", "club", "event", "competition", "place", "days",
			"segments", "sender", FACTS, LINK);

	private static final Pattern PLACE = Pattern.compile("\\[([^\\[\\]\\n]{1,60})]");

	private Placeholders() {
	}

	/** Whatever stands in brackets and cannot be filled in, each once. */
	static List<String> unknown(String text) {
		return PLACE.matcher(text)
			.results()
			.map((found) -> found.group(1))
			.filter((name) -> !KNOWN.contains(name))
			.distinct()
			.toList();
	}

	/** Tell whether a text has that place. */
	static boolean has(String text, String name) {
		return count(text, name) > 0;
	}

	/** How often a text has that place. */
	static int count(String text, String name) {
		return (int) PLACE.matcher(text).results().filter((found) -> found.group(1).equals(name)).count();
	}

	/**
	 * Fill a text in. A line that has nothing but a place for which there is nothing to
	 * say is left out.
	 */
	static Filled fill(String text, Map<String, String> values) {
		String kept = values.getOrDefault(FACTS, "").isEmpty() ? text.replaceAll("(?m)^\\[" + FACTS + "]\\R?", "")
				: text;
		StringBuilder filled = new StringBuilder();
		Integer linkAt = null;
		int read = 0;
		Matcher place = PLACE.matcher(kept);
		while (place.find()) {
			filled.append(kept, read, place.start());
			if (place.group(1).equals(LINK)) {
				linkAt = filled.length();
			}
			filled.append(values.getOrDefault(place.group(1), place.group()));
			read = place.end();
		}
		return new Filled(filled.append(kept, read, kept.length()).toString(), linkAt);
	}

	/**
	 * A text with all its places filled in.
	 *
	 * @param linkAt where the personal link stands, {@code null} for nowhere
	 */
	record Filled(String text, @Nullable Integer linkAt) {
	}

}
