package rimebook.tabulation.possible;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import rimebook.tabulation.TabulationException;

/** Checks of identifiers. */
final class Names {

	private Names() {
	}

	static void eachOnce(List<String> entries) {
		Set<String> seen = new HashSet<>();
		for (String entry : entries) {
			if (entry.isBlank()) {
				throw TabulationException.refused("entry-missing",
						"The entry must have an identifier that is not blank.");
			}
			if (!seen.add(entry)) {
				throw TabulationException.refused("duplicate-entry", "Entry '" + entry + "' is listed more than once.");
			}
		}
	}

}
