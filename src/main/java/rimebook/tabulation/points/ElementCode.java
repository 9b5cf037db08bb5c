package rimebook.tabulation.points;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.TabulationException;

/**
 * A called code of synchronized skating, taken apart: {@code NHE3+s4} is the element
 * {@code NHE} at level 3 with the feature {@code s} at level 4, {@code ME4<} is the
 * element {@code ME} at level 4 with one downgrade.
 *
 * @param element sign of the element, for example {@code NHE}
 * @param level its level
 * @param feature additional feature, or none
 * @param downgrades number of {@code <} behind the code, 0 to 2
 */
public record ElementCode(String element, ElementLevel level, @Nullable ElementFeature feature, int downgrades) {

	private static final Pattern CODE = Pattern.compile("([A-Z][A-Za-z]*)([B1-4])(?:\\+([a-z]+)([B1-4]))?(<{0,2})");

	/**
	 * Take a code apart.
	 * @param code as called
	 * @return its parts
	 * @throws TabulationException {@code code-malformed}
	 */
	public static ElementCode parse(String code) {
		Matcher matcher = CODE.matcher(code);
		if (!matcher.matches()) {
			throw Refusal.codeMalformed(code);
		}
		ElementFeature feature = (matcher.group(3) == null) ? null
				: new ElementFeature(matcher.group(3), ElementLevel.of(matcher.group(4)));
		return new ElementCode(matcher.group(1), ElementLevel.of(matcher.group(2)), feature, matcher.group(5).length());
	}

	/**
	 * Return the element that a code is about, without what the technical panel may still
	 * find about it: its level, its additional part with that part's level, downgrades.
	 * What was graded is the element, so a grade stands while this stays the same;
	 * {@code ME4}, {@code ME3} and {@code ME3<} are the same element, {@code I4+pi3} and
	 * {@code I4} are, {@code PB3} and {@code AB2} are not (common practice).
	 * @param code as called
	 * @return for example {@code I} of {@code I4+pi3}; a code that cannot be taken apart
	 * is an element of its own
	 */
	public static String elementOf(String code) {
		Matcher matcher = CODE.matcher(code);
		return matcher.matches() ? matcher.group(1) : code;
	}

	/**
	 * Lower the element by one level, as is done with a team that skates with fewer
	 * skaters than it must have (Handbook for Technical Panels, Synchronized Skating,
	 * 2019-20).
	 * @return the lower code, or none below basic
	 */
	public Optional<ElementCode> lowered() {
		return this.level.lower().map((lower) -> new ElementCode(this.element, lower, this.feature, this.downgrades));
	}

	/**
	 * Write as called.
	 * @return for example {@code I4+pi3}
	 */
	@Override
	public String toString() {
		return this.element + this.level.sign()
				+ ((this.feature == null) ? "" : "+" + this.feature.sign() + this.feature.level().sign())
				+ "<".repeat(this.downgrades);
	}

	/**
	 * A second called part of an element with a level of its own, such as {@code pi}, the
	 * point of intersection of {@code I}. Element and feature are one row of the table:
	 * two values are never added.
	 *
	 * @param sign how it is written in a code
	 * @param level its level
	 */
	public record ElementFeature(String sign, ElementLevel level) {

	}

	/** Difficulty of an element or of its additional feature. */
	public enum ElementLevel {

		/** Basic: the requirements are met, nothing more. */
		BASIC("B"),

		/** Level 1. */
		ONE("1"),

		/** Level 2. */
		TWO("2"),

		/** Level 3. */
		THREE("3"),

		/** Level 4. */
		FOUR("4");

		private final String sign;

		ElementLevel(String sign) {
			this.sign = sign;
		}

		static ElementLevel of(String sign) {
			return Arrays.stream(values()).filter((level) -> level.sign.equals(sign)).findFirst().orElseThrow();
		}

		/**
		 * Return how the level is written in a code.
		 * @return {@code B} or a digit
		 */
		public String sign() {
			return this.sign;
		}

		/**
		 * Return the next lower level.
		 * @return none below basic
		 */
		public Optional<ElementLevel> lower() {
			return (this == BASIC) ? Optional.empty() : Optional.of(values()[ordinal() - 1]);
		}

	}

}
