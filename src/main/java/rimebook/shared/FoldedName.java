package rimebook.shared;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A name of a club, a team or a town for comparing. Two are the same whatever their case,
 * blanks, apostrophes, dots and dashes and the way an accent was typed, clubs also
 * whatever form of a club's name was used ("SC", "Skating Club", nothing). They are near
 * when one of them is likely a slip for the other. The empty name is none, and neither
 * the same as nor near any. What is a form and what is near is ours, no rule of the
 * sport.
 */
public final class FoldedName {

	private static final Set<String> FORMS = Set.of("sc", "fsc", "isc", "ssc", "rc", "club", "ry", "ev", "asbl",
			"skating club", "figure skating club", "ice skating club", "synchronized skating club",
			"synchronised skating club", "skating club ry", "skating club ev");

	/** A name must be so long for one slip in it not to make another name of it. */
	private static final int ONE_SLIP = 5;

	private static final int TWO_SLIPS = 12;

	private final List<String> words;

	private final String folded;

	private FoldedName(List<String> words) {
		this.words = words;
		this.folded = String.join("", words);
	}

	/** Fold a name that has no form but its own: of a team, of a town. */
	public static FoldedName of(String name) {
		return new FoldedName(words(name));
	}

	/** Fold the name of a club. */
	public static FoldedName ofClub(String name) {
		List<String> words = words(name);
		for (int from = 1; from < words.size(); from++) {
			if (FORMS.contains(String.join(" ", words.subList(from, words.size())))) {
				return new FoldedName(words.subList(0, from));
			}
		}
		for (int to = words.size() - 1; to > 0; to--) {
			if (FORMS.contains(String.join(" ", words.subList(0, to)))) {
				return new FoldedName(words.subList(to, words.size()));
			}
		}
		return new FoldedName(words);
	}

	private static List<String> words(String name) {
		String plain = Normalizer.normalize(name.replaceAll("['`\u00b4\u2018\u2019\u201b\u02bc\u2032.]", ""),
				Normalizer.Form.NFKC);
		return List.of(plain.toLowerCase(Locale.ROOT).split("[\\s\\p{Z}\\p{P}]+"))
			.stream()
			.filter((word) -> !word.isEmpty())
			.toList();
	}

	/** Tell whether both are one name of a team or a town, however it was written. */
	public static boolean isSame(String one, String other) {
		return one.equals(other) || of(one).isSameAs(of(other));
	}

	/** The same for every form of a name; empty for the empty name. */
	public String key() {
		return this.folded;
	}

	/** Tell whether both are one name, however it was written. */
	public boolean isSameAs(FoldedName other) {
		return !this.folded.isEmpty() && this.folded.equals(other.folded);
	}

	/**
	 * Tell whether one is likely meant where the other is written: a slip or two in a
	 * longer name, or words left out at its end. Other digits are another name.
	 */
	public boolean isNear(FoldedName other) {
		if (this.folded.isEmpty() || other.folded.isEmpty() || isSameAs(other) || !digits().equals(other.digits())) {
			return false;
		}
		return begins(other) || other.begins(this) || slips(other) <= slipsAllowed(other);
	}

	private boolean begins(FoldedName longer) {
		return this.folded.length() >= ONE_SLIP && this.words.size() < longer.words.size()
				&& longer.words.subList(0, this.words.size()).equals(this.words);
	}

	private String digits() {
		return this.folded.replaceAll("\\D+", " ").strip();
	}

	private int slipsAllowed(FoldedName other) {
		int shorter = Math.min(this.folded.length(), other.folded.length());
		return (shorter >= TWO_SLIPS) ? 2 : (shorter >= ONE_SLIP) ? 1 : 0;
	}

	/**
	 * How many letters have to be put in, left out, exchanged, or two neighbours swapped
	 * (optimal string alignment distance).
	 */
	private int slips(FoldedName other) {
		int[][] slips = new int[this.folded.length() + 1][other.folded.length() + 1];
		for (int i = 0; i <= this.folded.length(); i++) {
			for (int j = 0; j <= other.folded.length(); j++) {
				slips[i][j] = (i == 0 || j == 0) ? i + j : fewest(slips, other, i, j);
			}
		}
		return slips[this.folded.length()][other.folded.length()];
	}

	private int fewest(int[][] slips, FoldedName other, int i, int j) {
		char here = this.folded.charAt(i - 1);
		char there = other.folded.charAt(j - 1);
		int fewest = Math.min(slips[i - 1][j - 1] + ((here == there) ? 0 : 1),
				1 + Math.min(slips[i - 1][j], slips[i][j - 1]));
		boolean swapped = i > 1 && j > 1 && here == other.folded.charAt(j - 2) && there == this.folded.charAt(i - 2);
		return swapped ? Math.min(fewest, slips[i - 2][j - 2] + 1) : fewest;
	}

}
