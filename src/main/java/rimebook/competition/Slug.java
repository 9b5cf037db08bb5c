package rimebook.competition;

import java.text.Normalizer;
import java.util.Locale;
import java.util.function.Predicate;

/** Names for addresses: small ASCII letters, digits and single hyphens. */
final class Slug {

	/** Room is left for a counter in the column of 80. */
	private static final int LONGEST = 70;

	private Slug() {
	}

	/**
	 * Make a slug of a name: {@code "Dunmöre Cup 2027" -> "dunmore-cup-2027"}.
	 * @param fallback used when no letter or digit of the name is left
	 */
	static String of(String name, String fallback) {
		String plain = Normalizer.normalize(name, Normalizer.Form.NFKD)
			.replaceAll("\\p{M}+", "")
			.toLowerCase(Locale.ROOT)
			.replaceAll("[^a-z0-9]+", "-")
			.replaceAll("^-+|-+$", "");
		String slug = plain.isEmpty() ? fallback : plain;
		return slug.substring(0, Math.min(LONGEST, slug.length())).replaceAll("-+$", "");
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
