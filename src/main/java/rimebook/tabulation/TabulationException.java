package rimebook.tabulation;

/**
 * Says why cards, ordinals or places cannot be tabulated. It is the only exception this
 * module throws for bad input. The code is stable and in kebab-case, the message a
 * sentence that names the field and the form expected.
 */
public final class TabulationException extends RuntimeException {

	private static final long serialVersionUID = 1L;

	private final String code;

	private TabulationException(String code, String sentence) {
		super(sentence);
		this.code = code;
	}

	/**
	 * Return the stable name of the refusal.
	 * @return for example {@code even-panel}
	 */
	public String code() {
		return this.code;
	}

	static TabulationException markOutOfRange(String field, int hundredths) {
		return new TabulationException(field + "-mark-out-of-range",
				"The " + field + " mark must be 0.0 to 6.0 in steps of 0.1 (0 to 600 hundredths in tens); got "
						+ hundredths + " hundredths.");
	}

	static TabulationException zeroMark(String entry) {
		return new TabulationException("zero-mark",
				"A card of entry '" + entry + "' has a mark of 0.0, which this rule set takes for 'not skated'.");
	}

	static TabulationException blankEntry() {
		return new TabulationException("entry-missing", "The entry must have an identifier that is not blank.");
	}

	static TabulationException duplicateEntry(String entry) {
		return new TabulationException("duplicate-entry", "Entry '" + entry + "' is listed more than once.");
	}

	static TabulationException noJudges(String entry) {
		return new TabulationException("no-judges",
				"Entry '" + entry + "' has skated but has no cards; one card of each judge is expected.");
	}

	static TabulationException unevenCards(String entry, int found, int expected) {
		return new TabulationException("uneven-cards", "Entry '" + entry + "' has " + found
				+ " cards where others have " + expected + "; one of each judge is expected.");
	}

	static TabulationException evenPanel(int judges) {
		return new TabulationException("even-panel", "The panel has " + judges
				+ " judges; an odd number is expected unless the rule set allows an even panel.");
	}

	static TabulationException cardsWithoutPerformance(String entry, EntryStatus status) {
		return new TabulationException("cards-without-performance",
				"Entry '" + entry + "' is " + status.words() + " but has cards; none are expected.");
	}

	static TabulationException ordinalOutOfRange(String entry, int ordinal) {
		return new TabulationException("ordinal-out-of-range", "Entry '" + entry + "' has the ordinal " + ordinal
				+ "; a whole number from 1 to " + EntryOrdinals.HIGHEST + " is expected.");
	}

	static TabulationException placeOutOfRange(String entry, int place) {
		return new TabulationException("place-out-of-range", "Entry '" + entry + "' has the segment place " + place
				+ "; a whole number from 1 to " + EntryPlaces.HIGHEST + " is expected.");
	}

	static TabulationException unevenPlaces(String entry, int found, int expected) {
		return new TabulationException("uneven-places", "Entry '" + entry + "' has " + found + " segment places; "
				+ expected + " are expected, one for each factor (empty where none was reached).");
	}

	static TabulationException factorOutOfRange(int hundredths) {
		return new TabulationException("factor-out-of-range",
				"A factor must be 0.01 to 100.0 (1 to 10000 hundredths); got " + hundredths + " hundredths.");
	}

	static TabulationException factorsMissing(int count) {
		return new TabulationException("factors-missing", "An event has 1 to " + CombinationRules.MOST_SEGMENTS
				+ " segments, each with a factor; got " + count + " factors.");
	}

}
