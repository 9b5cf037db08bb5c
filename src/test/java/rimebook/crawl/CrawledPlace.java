package rimebook.crawl;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A competition in one of its states, with what stands for the variables of a path.
 *
 * @param name method and state, in words
 * @param event the state of competition and event in words; many places have the same
 * @param ids values by variable, for the pages of the crew
 * @param slugs values by variable, for public pages
 */
record CrawledPlace(String name, String event, Map<String, List<String>> ids, Map<String, List<String>> slugs) {

	private static final Pattern VARIABLE = Pattern.compile("\\{(\\w+)(:[^/]+)?}");

	/**
	 * The addresses that a pattern has here: one for each combination of values, none
	 * where the place lacks one, such as a protest.
	 */
	List<String> addresses(String pattern) {
		Map<String, List<String>> values = pattern.matches("(/follow|/api/public)/.*") ? this.slugs : this.ids;
		return filled(pattern, (variable) -> {
			if (!values.containsKey(variable)) {
				throw new AssertionError("Say in this test what stands for {" + variable + "} in " + pattern);
			}
			return values.get(variable);
		});
	}

	private static List<String> filled(String pattern, Function<String, List<String>> values) {
		Matcher variable = VARIABLE.matcher(pattern);
		if (!variable.find()) {
			return List.of(pattern);
		}
		List<String> addresses = new ArrayList<>();
		for (String value : values.apply(variable.group(1))) {
			addresses.addAll(
					filled(pattern.substring(0, variable.start()) + value + pattern.substring(variable.end()), values));
		}
		return addresses;
	}

	static boolean hasVariable(String pattern) {
		return VARIABLE.matcher(pattern).find();
	}

}
