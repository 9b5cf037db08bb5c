package rimebook.competition.web;

import java.util.List;
import java.util.Locale;

import rimebook.tabulation.points.ElementValue;
import rimebook.tabulation.points.PointsRules;

/**
 * A row of the table of values with its code in words.
 *
 * @param name the code in words
 */
record ValueRow(ElementValue value, String name) {

	/**
	 * The rows in which every word is found, in the order of the table.
	 * @param search words of code or name; empty for all rows
	 */
	static List<ValueRow> of(PointsRules rules, String search) {
		List<String> words = List.of(search.toLowerCase(Locale.ROOT).split("\\s+"));
		return rules.values()
			.values()
			.values()
			.stream()
			.map((value) -> new ValueRow(value, rules.nameOf(value.code())))
			.filter((row) -> words.stream().allMatch(row::holds))
			.toList();
	}

	private boolean holds(String word) {
		return (this.value.code() + " " + this.name).toLowerCase(Locale.ROOT).contains(word);
	}

}
