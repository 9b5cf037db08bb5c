package rimebook.placement;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.regex.Pattern;

import rimebook.paper.PaperCards;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.Hundredths;

/** A line of a paper card of two marks: 0.0 to 6.0 in tenths, kept in hundredths. */
public record MarkLine(String key, String kind, int number, String name, int most) implements PaperCards.CardLine {

	/** The first of two marks. */
	public static final MarkLine FIRST = new MarkLine("first", "FIRST_MARK");

	/** The second of two marks. */
	public static final MarkLine SECOND = new MarkLine("second", "SECOND_MARK");

	static final List<PaperCards.CardLine> BOTH = List.of(FIRST, SECOND);

	private static final int HIGHEST = 600;

	private static final Pattern TENTHS = Pattern.compile("\\d|\\d[.,]\\d|\\d\\d");

	private MarkLine(String key, String kind) {
		this(key, kind, 0, "", 0);
	}

	/** The lines of a card of two marks. */
	public static PaperCards.KeyedCard card(CardMarks marks) {
		Map<String, Integer> lines = new LinkedHashMap<>();
		lines.put(FIRST.key, marks.first());
		lines.put(SECOND.key, marks.second());
		return new PaperCards.KeyedCard(lines);
	}

	/** Read as a card of two marks; both have to be there. */
	static CardMarks marks(PaperCards.KeyedCard card) {
		return new CardMarks(Objects.requireNonNull(card.lines().get(FIRST.key)),
				Objects.requireNonNull(card.lines().get(SECOND.key)));
	}

	@Override
	public String words(int value) {
		return Hundredths.decimal(value);
	}

	/** {@code "5.6"}, {@code "5,6"}, {@code "56"} or {@code "5"}. */
	@Override
	public OptionalInt read(String typed) {
		String mark = typed.strip();
		if (!TENTHS.matcher(mark).matches()) {
			return OptionalInt.empty();
		}
		int value = hundredths(mark.replaceAll("[.,]", ""));
		return (value <= HIGHEST) ? OptionalInt.of(value) : OptionalInt.empty();
	}

	/** Two figures without a point are quick to key: 56 is 5.6. */
	private static int hundredths(String figures) {
		return Integer.parseInt(figures) * ((figures.length() == 1) ? 100 : 10);
	}

}
