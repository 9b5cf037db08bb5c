package rimebook.stand;

import rimebook.pages.Choice;
import rimebook.pages.RinkClock;
import rimebook.points.NotedDeduction;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.PointsRules;

/**
 * A deduction as the referee sees it.
 *
 * @param words as on the sheet: "Fall: -2.00 (2)"
 * @param time when it was noted, in the rink's time; empty where that is not known
 */
public record DeductionRow(String words, String notedBy, String time) {

	/** As it was noted, by the rules of its segment and the clock of its rink. */
	public static DeductionRow of(NotedDeduction noted, PointsRules rules, RinkClock rink) {
		return new DeductionRow(
				rules.deduction(noted.item()).map((rule) -> words(rule, noted.count())).orElse(noted.item()),
				noted.notedBy(), rink.time(noted.notedAt()));
	}

	/** What is offered: an amount that was written down from memory says so. */
	public static Choice choice(DeductionRule rule) {
		String known = rule.source().needsChecking() ? "; " + rule.source().provenance().words() : "";
		return new Choice(rule.item(), rule.name() + " (" + rule.unit().words() + known + ")");
	}

	/** As on the sheet: "Fall: -2.00 (2)". */
	public static String words(DeductionRule rule, int count) {
		return rule.name() + ": -" + rule.points(count) + ((count == 1) ? "" : " (" + count + ")");
	}

}
