package rimebook.points;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import rimebook.shared.RuleViolationException;
import rimebook.tabulation.points.ElementWorth;

/**
 * A place in what the technical panel sent: an element or a deduction, or where a further
 * one is put in. What stands there is a text: a code, with why it does not count where it
 * does not ("ME4", "ME4 NO_VALUE"); an item with its count ("fall 2"); empty for nothing.
 *
 * @param element whether it is an element, not a deduction
 * @param number which one, from 1; for a further element the place it takes
 * @param further whether something is put in
 */
public record SheetLine(boolean element, int number, boolean further) {

	private static final Pattern FORM = Pattern.compile("(called|deducted):(\\+?)([1-9]\\d?)");

	/** Tell whether a text names such a place. */
	public static boolean isOne(String text) {
		return FORM.matcher(text).matches();
	}

	/**
	 * Read a place: {@code called:3}, {@code called:+3}, {@code deducted:1}.
	 * @throws RuleViolationException {@code line-unknown}
	 */
	public static SheetLine parse(String text) {
		Matcher found = FORM.matcher(text);
		if (!found.matches()) {
			throw unknown();
		}
		return new SheetLine(found.group(1).equals("called"), Integer.parseInt(found.group(3)),
				!found.group(2).isEmpty());
	}

	static RuleViolationException unknown() {
		return new RuleViolationException("line-unknown", "line",
				"That performance has no such line; choose one that it has.");
	}

	/** What stands there for an element. */
	static String text(CalledElement element) {
		return text(element.code(), element.worth());
	}

	/** What stands there for an element of that code and worth. */
	public static String text(String code, ElementWorth worth) {
		return (worth == ElementWorth.COUNTS) ? code : code + " " + worth;
	}

	/** What stands there for a deduction. */
	public static String text(String item, int count) {
		return item + " " + count;
	}

	static String code(String text) {
		return text.split(" ")[0];
	}

	static ElementWorth worth(String text) {
		int blank = text.indexOf(' ');
		return (blank < 0) ? ElementWorth.COUNTS : ElementWorth.valueOf(text.substring(blank + 1));
	}

	static int count(String text) {
		return Integer.parseInt(text.substring(text.lastIndexOf(' ') + 1));
	}

	/** The place in words: "element 3", "further element as 3", "deduction 1". */
	public String words() {
		String what = this.element ? "element" : "deduction";
		if (!this.further) {
			return what + " " + this.number;
		}
		return "further " + what + (this.element ? " as " + this.number : "");
	}

	/** What stands there in words: "ME4", "ME4 (no value)", "fall 2", "nothing". */
	public String words(String text) {
		if (text.isEmpty()) {
			return "nothing";
		}
		if (!this.element || worth(text) == ElementWorth.COUNTS) {
			return text;
		}
		return code(text) + " (" + worth(text).words() + ")";
	}

	/** Write so that {@link #parse} reads it. */
	@Override
	public String toString() {
		return (this.element ? "called:" : "deducted:") + (this.further ? "+" : "") + this.number;
	}

}
