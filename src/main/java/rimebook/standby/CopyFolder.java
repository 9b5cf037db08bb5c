package rimebook.standby;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The second place and what lies there. Nothing is remembered: whoever looks reads the
 * folder anew, since a stick may have been changed.
 *
 * @param path where it is
 */
record CopyFolder(Path path) {

	static final String COPY = ".zip";

	static final String NOTE = ".txt";

	static final String SINCE = ".since.jsonl";

	private static final String PREFIX = "rimebook-2";

	private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss.SSS'Z'", Locale.ROOT)
		.withZone(ZoneOffset.UTC);

	static String nameOf(Instant at) {
		return "rimebook-" + STAMP.format(at);
	}

	/** The name of the copy that a file belongs to. */
	static String nameOf(Path file) {
		return name(file).replaceFirst("(\\.zip|\\.txt|\\.since\\.jsonl)$", "");
	}

	Path copy(String name) {
		return this.path.resolve(name + COPY);
	}

	Path note(String name) {
		return this.path.resolve(name + NOTE);
	}

	Path since(String name) {
		return this.path.resolve(name + SINCE);
	}

	Path alive() {
		return this.path.resolve("rimebook-alive" + NOTE);
	}

	/** The notes that can be read, the newest copy first. */
	List<CopyNote> notes() throws IOException {
		List<CopyNote> notes = new ArrayList<>();
		for (Path file : files(NOTE)) {
			try {
				notes.add(CopyNote.read(file));
			}
			catch (IOException ex) {
				// Told as broken by whoever starts from this folder; here it is no copy.
				continue;
			}
		}
		notes.sort(Comparator.comparing(CopyNote::at).reversed());
		return notes;
	}

	List<Path> files(String ending) throws IOException {
		try (Stream<Path> files = Files.list(this.path)) {
			return files.filter((file) -> name(file).startsWith(PREFIX) && name(file).endsWith(ending))
				.sorted()
				.toList();
		}
	}

	/** Take away what is not to be kept, and what never became whole. */
	void thin(Instant now) throws IOException {
		List<CopyNote> notes = notes();
		Set<String> kept = Thinning.kept(notes.stream().map(CopyNote::at).toList(), now)
			.stream()
			.map(CopyFolder::nameOf)
			.collect(Collectors.toSet());
		// The note goes first: what loses its power in between leaves nothing that looks
		// whole.
		for (String ending : List.of(NOTE, COPY, SINCE, COPY + WholeFile.PART, NOTE + WholeFile.PART)) {
			for (Path file : files(ending)) {
				if (!kept.contains(name(file).substring(0, name(file).length() - ending.length()))) {
					Files.deleteIfExists(file);
				}
			}
		}
	}

	private static String name(Path file) {
		return file.getFileName().toString();
	}

}
