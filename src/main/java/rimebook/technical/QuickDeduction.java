package rimebook.technical;

import java.util.Arrays;
import java.util.List;

import rimebook.tabulation.points.PointsRules;

/** What the technical panel notes with one key, where the rule set has the item. */
enum QuickDeduction {

	ONE_FALL("fall", 1, "F"), MORE_FALLS("fall", 2, "Shift+F"), ILLEGAL("illegal", 1, ""), EXTRA("extra", 1, "");

	private final String item;

	private final int count;

	private final String shortcut;

	QuickDeduction(String item, int count, String shortcut) {
		this.item = item;
		this.count = count;
		this.shortcut = shortcut;
	}

	static List<QuickDeduction> in(PointsRules rules) {
		return Arrays.stream(values()).filter((quick) -> rules.deduction(quick.item).isPresent()).toList();
	}

	/** Tell whether an amount of theirs was written down from memory. */
	static boolean anyFromMemory(PointsRules rules) {
		return Arrays.stream(values())
			.flatMap((quick) -> rules.deduction(quick.item).stream())
			.anyMatch((rule) -> rule.source().needsChecking());
	}

	public String item() {
		return this.item;
	}

	public int count() {
		return this.count;
	}

	/** The key, empty for none. */
	public String shortcut() {
		return this.shortcut;
	}

}
