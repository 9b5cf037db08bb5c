package rimebook.standby;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * What is written down beside a copy, in lines of {@code name: value} that people can
 * read. Without its note a copy is not whole.
 *
 * @param name the name of the copy, without ending
 * @param at the moment before which everything is in it, UTC
 * @param head the record's head in it
 * @param life which life of the database was copied
 * @param sha256 the digest of the file
 */
record CopyNote(String name, Instant at, RecordHead head, String life, String sha256) {

	/**
	 * Write it.
	 * @param anchor the anchor of the record's head in the copy, empty if there is none
	 */
	void write(Path file, String anchor) throws IOException {
		Map<String, String> lines = new LinkedHashMap<>();
		lines.put("copy", this.name + CopyFolder.COPY);
		lines.put("time", this.at.toString());
		lines.put("record-line", Long.toString(this.head.line()));
		lines.put("record-head", this.head.digest());
		lines.put("life", this.life);
		lines.put("sha256", this.sha256);
		put(lines, anchor);
		WholeFile.write(file, text(lines));
	}

	/**
	 * Read one.
	 * @throws IOException if it cannot be read, or is not one
	 */
	static CopyNote read(Path file) throws IOException {
		Map<String, String> lines = lines(file);
		try {
			return new CopyNote(line(lines, "copy").replaceFirst("\\.zip$", ""), Instant.parse(line(lines, "time")),
					head(lines), line(lines, "life"), line(lines, "sha256"));
		}
		catch (RuntimeException ex) {
			throw new IOException("not a note of a copy", ex);
		}
	}

	private static String line(Map<String, String> lines, String name) {
		return Objects.requireNonNull(lines.get(name), name);
	}

	static void put(Map<String, String> lines, String anchor) {
		if (!anchor.isEmpty()) {
			lines.put("anchor", anchor);
		}
	}

	static RecordHead head(Map<String, String> lines) {
		return new RecordHead(Long.parseLong(lines.getOrDefault("record-line", "")),
				lines.getOrDefault("record-head", ""));
	}

	static String text(Map<String, String> lines) {
		return lines.entrySet()
			.stream()
			.map((line) -> line.getKey() + ": " + line.getValue() + "\n")
			.collect(Collectors.joining());
	}

	static Map<String, String> lines(Path file) throws IOException {
		return Files.readString(file, StandardCharsets.UTF_8)
			.lines()
			.filter((line) -> line.contains(": "))
			.collect(Collectors.toMap((line) -> line.substring(0, line.indexOf(": ")),
					(line) -> line.substring(line.indexOf(": ") + 2), (first, again) -> again));
	}

}
