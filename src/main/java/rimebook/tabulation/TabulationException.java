package rimebook.tabulation;

import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * Says why cards, ordinals or places cannot be tabulated. It is the only exception this
 * module throws for bad input. The code is stable and in kebab-case, the sentence names
 * the field and the form expected.
 */
public final class TabulationException extends RuntimeException {

	private static final long serialVersionUID = 2L;

	private final String code;

	private final Sentence sentence;

	private final transient @Nullable TextPosition position;

	private TabulationException(String code, Sentence sentence) {
		this(code, sentence, null);
	}

	private TabulationException(String code, Sentence sentence, @Nullable TextPosition position) {
		this.code = code;
		this.sentence = sentence;
		this.position = position;
	}

	/**
	 * Make a refusal for a judging method that lives in a package of its own.
	 * @param code stable name in kebab-case
	 * @param sentence what is wrong and what was expected
	 * @return the refusal
	 */
	public static TabulationException refused(String code, Sentence sentence) {
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
		return this.sentence.english();
	}

	/**
	 * Return what is wrong and what was expected, to be worded.
	 * @return with the identities of entries, see {@link EntryName}
	 */
	public Sentence sentence() {
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
				Sentence.of("tabulation.mark-out-of-range." + field, hundredths));
	}

	static TabulationException zeroMark(String entry) {
		return new TabulationException("zero-mark", Sentence.of("tabulation.zero-mark", EntryName.within(entry)));
	}

	static TabulationException secondMarkGiven(String entry) {
		return new TabulationException("second-mark-given",
				Sentence.of("tabulation.second-mark-given", EntryName.within(entry)));
	}

	static TabulationException blankEntry() {
		return new TabulationException("entry-missing", Sentence.of("tabulation.entry-missing"));
	}

	static TabulationException duplicateEntry(String entry) {
		return new TabulationException("duplicate-entry",
				Sentence.of("tabulation.duplicate-entry", EntryName.first(entry)));
	}

	static TabulationException noJudges(String entry) {
		return new TabulationException("no-judges", Sentence.of("tabulation.no-judges", EntryName.first(entry)));
	}

	static TabulationException unevenCards(String entry, int found, int expected) {
		return new TabulationException("uneven-cards",
				Sentence.of("tabulation.uneven-cards", EntryName.first(entry), found, expected));
	}

	static TabulationException evenPanel(int judges) {
		return new TabulationException("even-panel", Sentence.of("tabulation.even-panel", judges));
	}

	static TabulationException cardsWithoutPerformance(String entry, EntryStatus status) {
		return new TabulationException("cards-without-performance",
				Sentence.of("tabulation.cards-without-performance", EntryName.first(entry), status.spoken()));
	}

	static TabulationException ordinalOutOfRange(String entry, int ordinal) {
		return new TabulationException("ordinal-out-of-range",
				Sentence.of("tabulation.ordinal-out-of-range", EntryName.first(entry), ordinal, EntryOrdinals.HIGHEST));
	}

	static TabulationException placeOutOfRange(String entry, int place) {
		return new TabulationException("place-out-of-range",
				Sentence.of("tabulation.place-out-of-range", EntryName.first(entry), place, EntryPlaces.HIGHEST));
	}

	static TabulationException unevenPlaces(String entry, int found, int expected) {
		return new TabulationException("uneven-places",
				Sentence.of("tabulation.uneven-places", EntryName.first(entry), found, expected));
	}

	static TabulationException factorOutOfRange(int hundredths) {
		return new TabulationException("factor-out-of-range",
				Sentence.of("tabulation.factor-out-of-range", hundredths));
	}

	static TabulationException factorsMissing(int count) {
		return new TabulationException("factors-missing",
				Sentence.of("tabulation.factors-missing", CombinationRules.MOST_SEGMENTS, count));
	}

	/**
	 * Refuse a panel of a size that no panel has.
	 * @param judges how many seats it has
	 * @return {@code panel-out-of-range}
	 */
	public static TabulationException panelOutOfRange(int judges) {
		return new TabulationException("panel-out-of-range",
				Sentence.of("tabulation.panel-out-of-range", PanelCheck.MOST_JUDGES, judges));
	}

	/**
	 * Refuse an entry that nobody knows.
	 * @param entry identifier
	 * @return {@code entry-unknown}
	 */
	public static TabulationException unknownEntry(String entry) {
		return new TabulationException("entry-unknown",
				Sentence.of("tabulation.entry-unknown", EntryName.within(entry)));
	}

	/**
	 * Refuse a pair that is none.
	 * @param entry identifier
	 * @return {@code nothing-to-compare}
	 */
	public static TabulationException nothingToCompare(String entry) {
		return new TabulationException("nothing-to-compare",
				Sentence.of("tabulation.nothing-to-compare", EntryName.first(entry)));
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
