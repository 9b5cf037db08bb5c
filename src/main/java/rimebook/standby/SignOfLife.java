package rimebook.standby;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The last word of a service at the second place, which is also an anchor of its record
 * outside the database.
 *
 * @param at when it was written, UTC
 * @param head the record's head then
 * @param life which life of the database
 */
record SignOfLife(Instant at, RecordHead head, String life) {

	/**
	 * Write it.
	 * @param anchor the anchor of the head, empty if there is none
	 */
	void write(Path file, String anchor) throws IOException {
		Map<String, String> lines = new LinkedHashMap<>();
		lines.put("time", this.at.toString());
		lines.put("record-line", Long.toString(this.head.line()));
		lines.put("record-head", this.head.digest());
		lines.put("life", this.life);
		CopyNote.put(lines, anchor);
		WholeFile.write(file, CopyNote.text(lines));
	}

	/** Read it; empty where there is none that can be read. */
	static Optional<SignOfLife> read(Path file) {
		try {
			if (Files.notExists(file)) {
				return Optional.empty();
			}
			Map<String, String> lines = CopyNote.lines(file);
			return Optional.of(new SignOfLife(Instant.parse(lines.getOrDefault("time", "")), CopyNote.head(lines),
					lines.getOrDefault("life", "")));
		}
		catch (IOException | RuntimeException ex) {
			return Optional.empty();
		}
	}

}
