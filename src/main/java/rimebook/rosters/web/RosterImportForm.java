package rimebook.rosters.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Set;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.web.multipart.MultipartFile;

import rimebook.rosters.RosterImport;

/**
 * A file of rosters, uploaded or pasted, and what is said about its rows.
 *
 * @param file goes first where both are given
 * @param aside the lines of rows that are left out
 * @param another those whose person is nobody who is known
 */
record RosterImportForm(@Nullable String csv, @Nullable MultipartFile file, @Nullable Set<String> aside,
		@Nullable Set<String> another) {

	@Override
	public String csv() {
		return (this.csv != null) ? this.csv : "";
	}

	static RosterImportForm of(String csv) {
		return new RosterImportForm(csv, null, Set.of(), Set.of());
	}

	String text(RosterImport reading) {
		if (this.file == null || this.file.isEmpty()) {
			return csv();
		}
		try {
			return reading.textOf(this.file.getBytes());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	RosterImport.Answers answers() {
		return new RosterImport.Answers(lines(), others());
	}

	public Set<Integer> lines() {
		return numbers(this.aside);
	}

	public Set<Integer> others() {
		return numbers(this.another);
	}

	/** The lines as numbers; what is none is no line. */
	private static Set<Integer> numbers(@Nullable Set<String> lines) {
		return (lines == null) ? Set.of()
				: lines.stream()
					.filter((line) -> line.matches("\\d{1,6}"))
					.map(Integer::valueOf)
					.collect(Collectors.toUnmodifiableSet());
	}

}
