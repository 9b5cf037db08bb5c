package rimebook.letters;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Places in a text that each letter fills in: a name in square brackets. What is filled
 * in is never looked at again, so a team may be called anything.
 */
final class Placeholders {

	/** What the modules tell, line by line. */
	static final String FACTS = "facts";

	/** All that may stand in a text. */
	static final List<String> KNOWN = List.of("recipient", "team", "club", "event", "competition", "place", "days",
			"segments", "sender", FACTS);

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
		return text.contains("[" + name + "]");
	}

	/**
	 * Fill a text in. A line that has nothing but a place for which there is nothing to
	 * say is left out.
	 */
	static String fill(String text, Map<String, String> values) {
		String kept = values.getOrDefault(FACTS, "").isEmpty() ? text.replaceAll("(?m)^\\[" + FACTS + "]\\R?", "")
				: text;
		return PLACE.matcher(kept)
			.replaceAll((found) -> Matcher.quoteReplacement(values.getOrDefault(found.group(1), found.group())));
	}

}
