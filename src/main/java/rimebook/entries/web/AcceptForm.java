package rimebook.entries.web;

import java.util.Set;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.entries.RowAnswers;

/**
 * The word that a file be entered.
 *
 * @param aside the lines of the rows that are left out
 * @param another those whose club or team is none of those it is near to
 */
record AcceptForm(@Nullable String csv, @Nullable Set<String> aside, @Nullable Set<String> another) {

	AcceptForm {
		csv = (csv != null) ? csv : "";
		aside = (aside != null) ? aside : Set.of();
		another = (another != null) ? another : Set.of();
	}

	RowAnswers answers() {
		return new RowAnswers(lines(), others());
	}

	public Set<Integer> lines() {
		return numbers(this.aside);
	}

	public Set<Integer> others() {
		return numbers(this.another);
	}

	/** The lines as numbers; what is none is no line. */
	private static Set<Integer> numbers(Set<String> lines) {
		return lines.stream()
			.filter((line) -> line.matches("\\d{1,6}"))
			.map(Integer::valueOf)
			.collect(Collectors.toUnmodifiableSet());
	}

	static AcceptForm of(String csv) {
		return new AcceptForm(csv, Set.of(), Set.of());
	}

}
