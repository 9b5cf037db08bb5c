package rimebook.tabulation.possible;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import rimebook.tabulation.EntryName;
import rimebook.tabulation.TabulationException;
import rimebook.wording.Sentence;

/** Checks of identifiers. */
final class Names {

	private Names() {
	}

	static void eachOnce(List<String> entries) {
		Set<String> seen = new HashSet<>();
		for (String entry : entries) {
			if (entry.isBlank()) {
				throw TabulationException.refused("entry-missing", Sentence.of("tabulation.entry-missing"));
			}
			if (!seen.add(entry)) {
				throw TabulationException.refused("duplicate-entry",
						Sentence.of("tabulation.duplicate-entry", EntryName.first(entry)));
			}
		}
	}

}
