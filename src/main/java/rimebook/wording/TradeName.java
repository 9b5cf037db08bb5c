package rimebook.wording;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a rule set calls an element, a component, a deduction and itself, in other
 * languages. A standing keeps the English name; each of its parts ("move element", "level
 * 4", "with step sequence") has words of its own. A name of which a part has none stays
 * English as a whole.
 */
final class TradeName {

	private static final Pattern LEVEL = Pattern.compile("level (\\d+)");

	private static final Pattern SEASON = Pattern.compile("season (\\d{4}-\\d{2})");

	private static final String WITH = "with ";

	private TradeName() {
	}

	/** The word for a name of one part, or the name as it stands. */
	static Sentence of(String name) {
		Sentence word = word(name);
		return isSpokenIn(name, Locale.ENGLISH) && word.english().equals(name) ? word : Sentence.said(name);
	}

	/** Tell whether a language has words for all of a name. */
	static boolean isSpokenIn(String name, Locale language) {
		return parts(name).stream().allMatch((part) -> part.isSpokenIn(language) && known(part, language));
	}

	/** Say a name; in English where the language lacks a part. */
	static String in(String name, Locale language) {
		if (language.equals(Locale.ENGLISH) || !isSpokenIn(name, language)) {
			return name;
		}
		return String.join(", ", parts(name).stream().map((part) -> part.in(language)).toList());
	}

	private static boolean known(Sentence part, Locale language) {
		return part.arguments()
			.stream()
			.filter(Sentence.class::isInstance)
			.allMatch((inner) -> ((Sentence) inner).isSpokenIn(language));
	}

	private static List<Sentence> parts(String name) {
		return Arrays.stream(name.split(", ")).map(TradeName::part).toList();
	}

	private static Sentence part(String part) {
		Matcher level = LEVEL.matcher(part);
		if (level.matches()) {
			return Sentence.of("trade.level", Integer.parseInt(level.group(1)));
		}
		Matcher season = SEASON.matcher(part);
		if (season.matches()) {
			return Sentence.of("trade.season", season.group(1));
		}
		return part.startsWith(WITH) ? Sentence.of("trade.with", word(part.substring(WITH.length()))) : word(part);
	}

	private static Sentence word(String english) {
		return Sentence.of("trade." + english.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-"));
	}

}
