package rimebook.protests.web;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

import rimebook.performances.Amendment;
import rimebook.points.SheetAmendment;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * A choice of a form: a place in what the technical panel sent, or where a further
 * element or deduction is put in.
 *
 * @param element whether it is an element, not a deduction
 * @param number which one, from 1; for a further element the place it takes
 * @param further whether something is put in
 */
record SheetPlace(boolean element, int number, boolean further) {

	private static final Pattern FORM = Pattern.compile("(called|deducted):(\\+?)([1-9]\\d?)");

	/**
	 * Read a place: {@code called:3}, {@code called:+3}, {@code deducted:1}.
	 * @param element whether it has to be an element
	 * @throws RuleViolationException {@code line-unknown}
	 */
	static SheetPlace parse(String text, boolean element) {
		Matcher found = FORM.matcher(text);
		if (!found.matches() || found.group(1).equals("called") != element) {
			throw new RuleViolationException("line-unknown", "line", Sentence.of("protests.line-unknown"));
		}
		return new SheetPlace(element, Integer.parseInt(found.group(3)), !found.group(2).isEmpty());
	}

	/** The place with nothing in it. */
	Amendment nothing() {
		return this.element ? SheetAmendment.ElementAmendment.nothing(this.number, this.further)
				: SheetAmendment.DeductionAmendment.nothing(this.number, this.further);
	}

	/** The place in words: "element 3", "further element as 3", "deduction 1". */
	String words() {
		return nothing().place();
	}

	/** Write so that {@link #parse} reads it. */
	@Override
	public String toString() {
		return (this.element ? "called:" : "deducted:") + (this.further ? "+" : "") + this.number;
	}

}
