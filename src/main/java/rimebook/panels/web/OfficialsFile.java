package rimebook.panels.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Set;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.web.multipart.MultipartFile;

import rimebook.tables.TableText;

/**
 * A file of officials, uploaded or pasted; an uploaded one goes first.
 *
 * @param aside the lines of the rows that are left out
 */
record OfficialsFile(@Nullable MultipartFile file, @Nullable String csv, @Nullable Set<String> aside) {

	static OfficialsFile of(String csv) {
		return new OfficialsFile(null, csv, Set.of());
	}

	/** The text, of the upload if there is one. */
	String text() {
		if (this.file == null || this.file.isEmpty()) {
			return (this.csv != null) ? this.csv : "";
		}
		try {
			return TableText.of(this.file.getBytes());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** The lines set aside as numbers; what is none is no line. */
	public Set<Integer> lines() {
		return (this.aside == null) ? Set.of()
				: this.aside.stream()
					.filter((line) -> line.matches("\\d{1,6}"))
					.map(Integer::valueOf)
					.collect(Collectors.toUnmodifiableSet());
	}

}
