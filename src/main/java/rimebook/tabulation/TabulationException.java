package rimebook.tabulation;

import java.util.Optional;

import org.jspecify.annotations.Nullable;

/**
 * Says why cards, ordinals or places cannot be tabulated. It is the only exception this
 * module throws for bad input. The code is stable and in kebab-case, the message a
 * sentence that names the field and the form expected.
 */
public final class TabulationException extends RuntimeException {

	private static final long serialVersionUID = 1L;

	private final String code;

	private final String sentence;

	private final transient @Nullable TextPosition position;

	private TabulationException(String code, String sentence) {
		this(code, sentence, null);
	}

	private TabulationException(String code, String sentence, @Nullable TextPosition position) {
		super(sentence);
		this.code = code;
		this.sentence = sentence;
		this.position = position;
	}

	/**
	 * Make a refusal for a judging method that lives in a package of its own.
	 * @param code stable name in kebab-case
	 * @param sentence what is wrong and what was expected, with a full stop
	 * @return the refusal
	 */
	public static TabulationException refused(String code, String sentence) {
		return new TabulationException(code, sentence);
	}

	/**
	 * Say where in a text the refused thing stands.
	 * @param where line and column
	 * @return the same refusal with its position
	 */
	public TabulationException at(TextPosition where) {
		return new TabulationException(this.code, this.sentence, where);
	}

	@Override
	public String getMessage() {
		return this.sentence;
	}

	/**
	 * Return the stable name of the refusal.
	 * @return for example {@code even-panel}
	 */
	public String code() {
		return this.code;
	}

	/**
	 * Return where the refused thing stands, if it was read from a text.
	 * @return line and column
	 */
	public Optional<TextPosition> position() {
		return Optional.ofNullable(this.position);
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

	static TabulationException secondMarkGiven(String entry) {
		return new TabulationException("second-mark-given", "A card of entry '" + entry
				+ "' has a second mark where the rule set asks for one mark only; 0 is expected in its place.");
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

	/**
	 * Refuse a panel of a size that no panel has.
	 * @param judges how many seats it has
	 * @return {@code panel-out-of-range}
	 */
	public static TabulationException panelOutOfRange(int judges) {
		return new TabulationException("panel-out-of-range",
				"A panel has 1 to " + PanelCheck.MOST_JUDGES + " judges; got " + judges + ".");
	}

	/**
	 * Refuse an entry that nobody knows.
	 * @param entry identifier
	 * @return {@code entry-unknown}
	 */
	public static TabulationException unknownEntry(String entry) {
		return new TabulationException("entry-unknown", "There is no entry '" + entry + "' in the standing.");
	}

	/**
	 * Refuse a pair that is none.
	 * @param entry identifier
	 * @return {@code nothing-to-compare}
	 */
	public static TabulationException nothingToCompare(String entry) {
		return new TabulationException("nothing-to-compare", "Entry '" + entry
				+ "' has nothing to be compared with; two different teams with a place are expected.");
	}

	/**
	 * A place in a text that was read, for example a table of values.
	 *
	 * @param line from 1
	 * @param column number of the field in the line, from 1
	 */
	public record TextPosition(int line, int column) {

	}

}
