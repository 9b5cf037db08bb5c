package rimebook.crawl;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What no page may show to anybody: texts and values that were never filled in. */
final class PageFaults {

	private static final Pattern OWN_TO_SCRIPTS = Pattern.compile(
			"(?s)<(?:script.*?</script>|style.*?</style>|!--.*?-->|ul id=\"words\" hidden>.*?</ul>)|\\sdata-[\\w-]+=\"[^\"]*\"");

	private static final Pattern HEADING = Pattern.compile("(?s)<h1[^>]*>(.*?)</h1>");

	private static final List<Never> NEVER = List.of(new Never("a text without words", "\\?\\?[\\w.-]+\\?\\?", "??"),
			new Never("a place of a text not filled", "\\{\\d(,[^}]*)?}", "{"),
			new Never("an expression", "[$#*@~]\\{|\\[\\[|]]|th:\\w+=", "{", "[[", "]]", "th:"),
			new Never("nothing at all", "\\bnull\\b|\\bundefined\\b|\\bNaN\\b", "null", "undefined", "NaN"),
			new Never("an object", "(?<!--)\\brimebook\\.\\w+\\.|Optional[.\\[]|\\b[A-Z]\\w+\\[\\w+=", "rimebook.",
					"Optional", "["));

	private PageFaults() {
	}

	/** Everything wrong with a page or a part of one, in words; empty if nothing is. */
	static List<String> in(String html) {
		List<String> faults = new ArrayList<>();
		// What is left to scripts is taken out only where it matters: that takes longest.
		if (NEVER.stream().anyMatch((never) -> never.in(html).isPresent())) {
			String told = OWN_TO_SCRIPTS.matcher(html).replaceAll("");
			NEVER.forEach((never) -> never.in(told).ifPresent(faults::add));
		}
		List<String> headings = HEADING.matcher(html).results().map((heading) -> words(heading.group(1))).toList();
		if (html.contains("<html") && headings.size() != 1 || headings.contains("")) {
			faults.add("headings of the page: " + headings);
		}
		if (html.contains("id=\"following\"") && html.contains("id=\"live\"") && !html.contains("data-tag=\"")) {
			faults.add("a part that moves without a tag: something in it is not closed");
		}
		return faults;
	}

	private static String words(String html) {
		return html.replaceAll("<[^>]*>", "").strip();
	}

	private static String around(String text, int at) {
		return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 60)).replaceAll("\\s+", " ");
	}

	/** What never stands on a page; looked for only where one of its signs does. */
	private static final class Never {

		private final String name;

		private final Pattern pattern;

		private final List<String> signs;

		/**
		 * @param signs each way to be this has one of them
		 */
		private Never(String name, String pattern, String... signs) {
			this.name = name;
			this.pattern = Pattern.compile(pattern);
			this.signs = List.of(signs);
		}

		private Optional<String> in(String told) {
			if (this.signs.stream().noneMatch(told::contains)) {
				return Optional.empty();
			}
			Matcher found = this.pattern.matcher(told);
			return found.find() ? Optional.of(this.name + ": " + around(told, found.start())) : Optional.empty();
		}

	}

}
