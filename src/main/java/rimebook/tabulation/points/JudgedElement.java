package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.TabulationException;
import rimebook.wording.Sentence;

/**
 * An authorised element with the grades of the panel.
 *
 * @param number place in the programme, from 1
 * @param code as called
 * @param worth whether it counts; where it does not, the grades are kept and ignored
 * @param base in place of the base value in the table; none where the table holds
 * @param grades of each judge in the panel's order, null where one gave none; may be
 * empty where the element does not count
 */
public record JudgedElement(int number, String code, ElementWorth worth, @Nullable Points base,
		List<@Nullable Integer> grades) {

	/** The highest number an element may have. */
	public static final int HIGHEST_NUMBER = 100;

	/**
	 * Check the element by itself.
	 * @throws TabulationException {@code element-number-out-of-range},
	 * {@code code-missing}, {@code value-out-of-range} or {@code no-grades}
	 */
	public JudgedElement {
		grades = Collections.unmodifiableList(new ArrayList<>(grades));
		if (number < 1 || number > HIGHEST_NUMBER) {
			throw Refusal.elementNumberOutOfRange(number, HIGHEST_NUMBER);
		}
		if (code.isBlank()) {
			throw Refusal.blankCode();
		}
		if (base != null && !ElementValue.isBase(base)) {
			throw Refusal.valueOutOfRange(code);
		}
		if (worth == ElementWorth.COUNTS && grades.stream().allMatch((grade) -> grade == null)) {
			throw Refusal.noGrades(number, code);
		}
	}

	/**
	 * Return an element that counts.
	 * @param number place in the programme, from 1
	 * @param code as called
	 * @param grades of each judge, null where one gave none
	 * @return the element
	 */
	public static JudgedElement of(int number, String code, @Nullable Integer... grades) {
		return new JudgedElement(number, code, ElementWorth.COUNTS, null, Arrays.asList(grades));
	}

	/**
	 * Return an element that does not count.
	 * @param number place in the programme, from 1
	 * @param code as called
	 * @param worth why not
	 * @return the element
	 */
	public static JudgedElement without(int number, String code, ElementWorth worth) {
		return new JudgedElement(number, code, worth, null, List.of());
	}

	boolean counts() {
		return this.worth == ElementWorth.COUNTS;
	}

	/** Whether an element counts. */
	public enum ElementWorth {

		/** Base value and grades count. */
		COUNTS,

		/** Its basic requirement was missed: no base value, and no grade counts. */
		NO_VALUE,

		/** Beyond the number or kind allowed in the segment: as if it had no value. */
		TOO_MANY;

		/**
		 * Return the words used beside the element.
		 * @return for example {@code no value}
		 */
		public Sentence spoken() {
			return Sentence.of("worth." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
		}

		/**
		 * Return the same in English, as on the record.
		 * @return for example {@code no value}
		 */
		public String words() {
			return spoken().english();
		}

	}

}
