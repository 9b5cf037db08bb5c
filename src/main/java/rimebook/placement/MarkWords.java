package rimebook.placement;

import java.math.BigDecimal;

import rimebook.shared.RuleViolationException;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.Hundredths;
import rimebook.wording.Sentence;

/** Marks as people write them: hundredths shown and read as tenths. */
public final class MarkWords {

	private MarkWords() {
	}

	/** Write both marks of a card: "5.6 / 5.7". */
	public static String of(CardMarks marks) {
		return Hundredths.decimal(marks.first()) + " / " + Hundredths.decimal(marks.second());
	}

	/** Write a mark as a number with one decimal. */
	public static BigDecimal decimal(int hundredths) {
		return BigDecimal.valueOf(hundredths, 2).setScale(1);
	}

	/**
	 * Read a mark.
	 * @param field the field's name in the request
	 * @param mark 0.0 to 6.0 in tenths
	 * @return the mark in hundredths
	 * @throws RuleViolationException {@code mark-not-valid}, naming the field and the
	 * form
	 */
	public static int read(String field, BigDecimal mark) {
		if (mark.signum() < 0 || mark.compareTo(BigDecimal.valueOf(6)) > 0 || mark.stripTrailingZeros().scale() > 1) {
			throw RuleViolationException.ofField("mark-not-valid", field,
					Sentence.of("placement.mark-not-valid", shortened(mark.toString())));
		}
		return mark.movePointRight(2).intValueExact();
	}

	private static String shortened(String text) {
		return (text.length() > 20) ? text.substring(0, 20) + "…" : text;
	}

}
