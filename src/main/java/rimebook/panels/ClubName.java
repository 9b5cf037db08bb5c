package rimebook.panels;

import java.text.Normalizer;
import java.util.Locale;

/**
 * A club's name for comparing: two names are the same whatever their case, their blanks
 * and the way an accent was typed. The empty name is no club and equals none.
 */
final class ClubName {

	private final String folded;

	ClubName(String name) {
		this.folded = Normalizer.normalize(name, Normalizer.Form.NFKC)
			.toLowerCase(Locale.ROOT)
			.replaceAll("[\\s\\p{Z}]+", "");
	}

	boolean isSameAs(ClubName other) {
		return !this.folded.isEmpty() && this.folded.equals(other.folded);
	}

}
