package rimebook.tabulation.points;

/** Whether an element counts. */
public enum ElementWorth {

	/** Base value and grades count. */
	COUNTS("counts"),

	/** Its basic requirement was missed: no base value, and no grade counts. */
	NO_VALUE("no value"),

	/** Beyond the number or kind allowed in the segment: as if it had no value. */
	TOO_MANY("one element too many: no value");

	private final String words;

	ElementWorth(String words) {
		this.words = words;
	}

	/**
	 * Return the words used beside the element.
	 * @return for example {@code no value}
	 */
	public String words() {
		return this.words;
	}

}
