package rimebook.live;

import java.text.Normalizer;
import java.util.Locale;

/**
 * A name as people type it who are in a hurry: plain letters and digits, nothing else.
 */
final class FoldedTeam {

	/** No more of what was typed is looked at. */
	static final int MOST = 40;

	private FoldedTeam() {
	}

	/**
	 * Fold a name.
	 * @return for example "asvind" for "Åsvind"; empty where nothing is left of it
	 */
	static String of(String name) {
		String plain = Normalizer.normalize(name, Normalizer.Form.NFKD)
			.toLowerCase(Locale.ROOT)
			.replace("ø", "o")
			.replace("æ", "ae")
			.replace("ß", "ss")
			.replaceAll("[^a-z0-9]", "");
		return plain.substring(0, Math.min(MOST, plain.length()));
	}

}
