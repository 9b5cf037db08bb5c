package rimebook.arrival.web;

import java.text.Normalizer;
import java.util.Locale;
import java.util.stream.Stream;

import rimebook.arrival.CheckIn;

/** Whether a team is meant by a few letters, typed with cold fingers and no accents. */
final class FoundTeam {

	private FoundTeam() {
	}

	/** Tell whether the letters stand somewhere in its name or that of its club. */
	static boolean is(CheckIn team, String letters) {
		String wanted = folded(letters);
		return Stream.of(team.entry().team().name(), team.entry().team().club().name())
			.anyMatch((name) -> folded(name).contains(wanted));
	}

	private static String folded(String text) {
		return Normalizer.normalize(text.strip(), Normalizer.Form.NFD)
			.replaceAll("\\p{M}", "")
			.toLowerCase(Locale.ROOT);
	}

}
