package rimebook.entries.web;

import java.util.Set;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

/**
 * The word that a file be entered.
 *
 * @param aside the lines of the rows that are left out
 */
record AcceptForm(@Nullable String csv, @Nullable Set<String> aside) {

	AcceptForm {
		csv = (csv != null) ? csv : "";
		aside = (aside != null) ? aside : Set.of();
	}

	/** The lines as numbers; what is none is no line. */
	public Set<Integer> lines() {
		return this.aside.stream()
			.filter((line) -> line.matches("\\d{1,6}"))
			.map(Integer::valueOf)
			.collect(Collectors.toUnmodifiableSet());
	}

	static AcceptForm of(String csv) {
		return new AcceptForm(csv, Set.of());
	}

}
