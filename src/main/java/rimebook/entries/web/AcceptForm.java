package rimebook.entries.web;

import java.util.Set;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryImport;

/**
 * The word that a file be entered.
 *
 * @param aside the lines of the rows that are left out
 * @param another those whose club or team is none of those it is near to
 */
record AcceptForm(@Nullable String csv, @Nullable Set<String> aside, @Nullable Set<String> another) {

	@Override
	public String csv() {
		return (this.csv != null) ? this.csv : "";
	}

	@Override
	public Set<String> aside() {
		return (this.aside != null) ? this.aside : Set.of();
	}

	@Override
	public Set<String> another() {
		return (this.another != null) ? this.another : Set.of();
	}

	EntryImport.Answers answers() {
		return new EntryImport.Answers(lines(), others());
	}

	public Set<Integer> lines() {
		return numbers(aside());
	}

	public Set<Integer> others() {
		return numbers(another());
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
