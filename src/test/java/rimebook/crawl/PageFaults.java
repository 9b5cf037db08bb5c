package rimebook.crawl;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What no page may show to anybody: texts and values that were never filled in. */
final class PageFaults {

	private static final Pattern OWN_TO_SCRIPTS = Pattern.compile(
			"(?s)<script.*?</script>|<style.*?</style>|<!--.*?-->|<ul id=\"words\" hidden>.*?</ul>|\\sdata-[\\w-]+=\"[^\"]*\"");

	private static final Pattern HEADING = Pattern.compile("(?s)<h1[^>]*>(.*?)</h1>");

	private static final Map<String, Pattern> NEVER = new LinkedHashMap<>();

	static {
		NEVER.put("a text without words", Pattern.compile("\\?\\?[\\w.-]+\\?\\?"));
		NEVER.put("a place of a text not filled", Pattern.compile("\\{\\d(,[^}]*)?}"));
		NEVER.put("an expression", Pattern.compile("[$#*@~]\\{|\\[\\[|]]|th:\\w+="));
		NEVER.put("nothing at all", Pattern.compile("\\bnull\\b|\\bundefined\\b|\\bNaN\\b"));
		NEVER.put("an object", Pattern.compile("\\brimebook\\.\\w+\\.|Optional[.\\[]|\\b[A-Z]\\w+\\[\\w+="));
	}

	private PageFaults() {
	}

	/** Everything wrong with a page or a part of one, in words; empty if nothing is. */
	static List<String> in(String html) {
		String told = OWN_TO_SCRIPTS.matcher(html).replaceAll("");
		List<String> faults = new ArrayList<>();
		NEVER.forEach((what, pattern) -> {
			Matcher found = pattern.matcher(told);
			if (found.find()) {
				faults.add(what + ": " + around(told, found.start()));
			}
		});
		List<String> headings = HEADING.matcher(told).results().map((heading) -> words(heading.group(1))).toList();
		if (html.contains("<html") && headings.size() != 1 || headings.contains("")) {
			faults.add("headings of the page: " + headings);
		}
		return faults;
	}

	private static String words(String html) {
		return html.replaceAll("<[^>]*>", "").strip();
	}

	private static String around(String text, int at) {
		return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 60)).replaceAll("\\s+", " ");
	}

}
