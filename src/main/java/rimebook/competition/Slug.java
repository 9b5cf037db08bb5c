package rimebook.competition;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;

/** Names for addresses: small ASCII letters, digits and single hyphens. */
final class Slug {

	/** Room is left for a counter in the column of 80. */
	private static final int LONGEST = 70;

	/**
	 * What public addresses have in the place of a slug
	 * ({@code /follow/{competition}/board}): a competition, an event or a segment of that
	 * name would never be found.
	 */
	static final Set<String> TAKEN = Set.of("ask", "board", "ceremony", "find", "moments", "order", "paper", "pictures",
			"share", "signals", "standing", "team", "teams", "timetable", "versions", "why", "words");

	private Slug() {
	}

	/**
	 * Make a slug of a name: {@code "Dunmöre Cup 2027" -> "dunmore-cup-2027"}.
	 * @param fallback used when no letter or digit of the name is left, and put behind a
	 * word that addresses have already: an event "Board" is {@code "board-event"}
	 */
	static String of(String name, String fallback) {
		String plain = Normalizer.normalize(name, Normalizer.Form.NFKD)
			.replaceAll("\\p{M}+", "")
			.toLowerCase(Locale.ROOT)
			.replaceAll("[^a-z0-9]+", "-")
			.replaceAll("^-+|-+$", "");
		String slug = plain.isEmpty() ? fallback : plain;
		String cut = slug.substring(0, Math.min(LONGEST, slug.length())).replaceAll("-+$", "");
		return TAKEN.contains(cut) ? cut + "-" + fallback : cut;
	}

	/** As {@link #of}, with a counter from 2 when others have that slug already. */
	static String unique(String name, String fallback, Predicate<String> taken) {
		String slug = of(name, fallback);
		String candidate = slug;
		for (int number = 2; taken.test(candidate); number++) {
			candidate = slug + "-" + number;
		}
		return candidate;
	}

}
