package rimebook.tabulation.points;

import java.util.Arrays;
import java.util.Optional;

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
