package rimebook.wording;

import java.util.Collection;
import java.util.List;

/**
 * Parts that stand one after the other without an "and": what is still missing, what
 * speaks against something. Where a list is spoken, hand it to {@link Sentence#of} as it
 * is.
 */
public final class Series {

	private Series() {
	}

	/**
	 * Put commas between the parts.
	 * @param parts each as an argument of a sentence; nothing is said where there is none
	 */
	public static Sentence withCommas(Collection<?> parts) {
		return joined("figure.series.comma", parts);
	}

	/**
	 * Put semicolons between the parts, which have commas of their own.
	 * @param parts each as an argument of a sentence; nothing is said where there is none
	 */
	public static Sentence withSemicolons(Collection<?> parts) {
		return joined("figure.series.semicolon", parts);
	}

	private static Sentence joined(String key, Collection<?> parts) {
		return joined(key,
				parts.stream()
					.map((part) -> (part instanceof Sentence sentence) ? sentence : Sentence.said(part.toString()))
					.toList());
	}

	/** By halves: one after the other would nest a part for each, too deep for JSON. */
	private static Sentence joined(String key, List<Sentence> parts) {
		if (parts.size() < 2) {
			return parts.isEmpty() ? Sentence.NONE : parts.get(0);
		}
		int half = (parts.size() + 1) / 2;
		return Sentence.of(key, joined(key, parts.subList(0, half)), joined(key, parts.subList(half, parts.size())));
	}

}
