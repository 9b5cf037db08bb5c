package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Writes figures the way they are spoken; for the explanations of every judging method.
 */
public final class English {

	private static final int MOST_NAMED = 12;

	private static final int NAMED_OF_MANY = 10;

	private static final List<String> NUMBERS = List.of("no", "one", "two", "three", "four", "five", "six", "seven",
			"eight", "nine", "ten", "eleven", "twelve");

	private English() {
	}

	/**
	 * Spell a small number.
	 * @param count the number
	 * @return {@code 5 -> "five"}, {@code 13 -> "13"}
	 */
	public static String number(int count) {
		return (count < NUMBERS.size()) ? NUMBERS.get(count) : String.valueOf(count);
	}

	/**
	 * Count things.
	 * @param count how many
	 * @param noun in the singular
	 * @return {@code 1 -> "one judge"}, {@code 2 -> "two judges"}
	 */
	public static String count(int count, String noun) {
		return number(count) + " " + noun + ((count == 1) ? "" : "s");
	}

	/**
	 * Write a place.
	 * @param place from 1
	 * @return {@code 1 -> "1st"}, {@code 12 -> "12th"}, {@code 23 -> "23rd"}
	 */
	public static String ordinal(int place) {
		int lastTwo = place % 100;
		boolean teen = lastTwo >= 11 && lastTwo <= 13;
		return place + switch (teen ? 0 : place % 10) {
			case 1 -> "st";
			case 2 -> "nd";
			case 3 -> "rd";
			default -> "th";
		};
	}

	/** {@code 200 -> "2nd"}, {@code 150 -> "1.5"}. */
	static String ordinalOfHundredths(int hundredths) {
		boolean whole = hundredths % Hundredths.ONE == 0;
		return whole ? ordinal(hundredths / Hundredths.ONE) : Hundredths.plain(hundredths);
	}

	/** {@code 100 -> "1st"}, {@code 200 -> "2nd or better"}. */
	static String orBetter(int hundredths) {
		return ordinalOfHundredths(hundredths) + ((hundredths == Hundredths.ONE) ? "" : " or better");
	}

	/**
	 * Name teams, the first few of them where they are more than anybody reads.
	 * @param entries at least one identifier
	 * @param names turns an identifier into the name people know
	 * @return {@code "A"}, {@code "A and B"}, {@code "A, B and C"}, of more than twelve
	 * ten and {@code "90 others"}
	 */
	public static String list(List<String> entries, UnaryOperator<String> names) {
		List<String> words = new ArrayList<>(entries.stream().limit(named(entries.size())).map(names).toList());
		if (words.size() < entries.size()) {
			words.add(entries.size() - words.size() + " others");
		}
		if (words.size() == 1) {
			return words.get(0);
		}
		int last = words.size() - 1;
		return String.join(", ", words.subList(0, last)) + " and " + words.get(last);
	}

	private static int named(int entries) {
		return (entries > MOST_NAMED) ? NAMED_OF_MANY : entries;
	}

}
