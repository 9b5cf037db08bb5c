package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

import rimebook.wording.Sentence;

/**
 * Parts of sentences that every judging method needs. A place or a number that stands
 * alone in a pattern is an argument as it is; these are for what a pattern cannot do.
 */
public final class Phrases {

	private static final int MOST_NAMED = 12;

	private static final int NAMED_OF_MANY = 10;

	private Phrases() {
	}

	/**
	 * Spell a small number.
	 * @param count the number
	 * @return {@code 0 -> "no"}, {@code 5 -> "five"}, {@code 13 -> "13"}
	 */
	public static Sentence number(int count) {
		return Sentence.of("figure.number", count);
	}

	/**
	 * Count judges.
	 * @param count how many
	 * @return {@code 1 -> "one judge"}, {@code 2 -> "two judges"}
	 */
	static Sentence judges(int count) {
		return Sentence.of("figure.judges", count, number(count));
	}

	/**
	 * Write hundredths without needless decimals.
	 * @return {@code 300 -> "3"}, {@code 150 -> "1.5"}
	 */
	static Sentence plain(int hundredths) {
		return Sentence.of("figure.plain", hundredths);
	}

	/**
	 * Write hundredths with one decimal at least.
	 * @return {@code 300 -> "3.0"}, {@code 75 -> "0.75"}
	 */
	static Sentence decimal(int hundredths) {
		return Sentence.of("figure.decimal", hundredths);
	}

	/**
	 * Write an ordinal as a place.
	 * @return {@code 100 -> "1st"}, {@code 200 -> "2nd or better"},
	 * {@code 150 -> "1.5 or better"}
	 */
	static Sentence orBetter(int hundredths) {
		boolean whole = hundredths % Hundredths.ONE == 0;
		if (hundredths == Hundredths.ONE) {
			return Sentence.of("figure.first");
		}
		return whole ? Sentence.of("figure.place-or-better", hundredths / Hundredths.ONE)
				: Sentence.of("figure.between-or-better", plain(hundredths));
	}

	/**
	 * Name teams, the first few of them where they are more than anybody reads.
	 * @param entries at least one identifier
	 * @param names turns an identifier into the name people know
	 * @return the names, an argument of a sentence: {@code "A"}, {@code "A and B"},
	 * {@code "A, B and C"}, of more than twelve ten and {@code "90 others"}
	 */
	public static List<Object> list(List<String> entries, UnaryOperator<String> names) {
		int named = (entries.size() > MOST_NAMED) ? NAMED_OF_MANY : entries.size();
		List<Object> words = new ArrayList<>(entries.subList(0, named).stream().map(names).toList());
		if (named < entries.size()) {
			words.add(Sentence.of("figure.others", entries.size() - named));
		}
		return words;
	}

}
