package rimebook.music;

import java.text.Normalizer;

/**
 * What a file is called. The name that a browser sends is told to people and lies on no
 * disk; a name that the service gives is safe on every system that unpacks it.
 */
final class FileName {

	/** In characters; the table has room for more. */
	private static final int MOST = 120;

	private static final int MOST_OF_A_TEAM = 60;

	private FileName() {
	}

	/**
	 * The last part of a path, without what people cannot see or what turns the direction
	 * of writing; never empty.
	 */
	static String sent(String name) {
		String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
		String plain = Normalizer.normalize(seen(last, ""), Normalizer.Form.NFC).strip();
		return plain.isEmpty() ? "?" : cut(plain, MOST);
	}

	/**
	 * A team's name as part of a file's name: letters and digits of every script stay,
	 * what any system reserves becomes a blank.
	 */
	static String ofTeam(String team) {
		String safe = seen(Normalizer.normalize(team, Normalizer.Form.NFC), " ").replaceAll("[\\\\/:*?\"<>|.]+", " ")
			.replaceAll("\\s+", " ")
			.strip();
		return safe.isEmpty() ? "team" : cut(safe, MOST_OF_A_TEAM).strip();
	}

	private static String seen(String text, String instead) {
		return text.replaceAll("[\\p{Cc}\\p{Cf}\\p{Co}\\p{Cs}\\p{Cn}]", instead);
	}

	/** No character is cut in two. */
	private static String cut(String text, int most) {
		return (text.codePointCount(0, text.length()) <= most) ? text
				: text.substring(0, text.offsetByCodePoints(0, most - 1)) + "…";
	}

}
