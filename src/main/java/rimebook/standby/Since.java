package rimebook.standby;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * What the second place knows of the time after a copy.
 *
 * @param lines the lines of the record after it, the oldest first
 * @param sign the last sign of life, if it is later than the copy
 */
record Since(List<LostLine> lines, Optional<SignOfLife> sign) {

	private static final JsonMapper JSON = JsonMapper.shared();

	/** Read it; a line that was cut short is passed over. */
	static Since read(CopyFolder folder, CopyNote copy) throws IOException {
		TreeMap<Long, LostLine> lines = new TreeMap<>();
		for (Path file : folder.files(CopyFolder.SINCE)) {
			if (!isAfter(file, copy, folder)) {
				continue;
			}
			try (Stream<String> texts = Files.readString(file, StandardCharsets.UTF_8).lines()) {
				texts.flatMap((text) -> line(text).stream())
					.filter((line) -> line.number() > copy.head().line())
					.forEach((line) -> lines.put(line.number(), line));
			}
		}
		return new Since(List.copyOf(lines.values()), SignOfLife.read(folder.alive())
			.filter((sign) -> sign.life().equals(copy.life()) && !sign.at().isBefore(copy.at())));
	}

	/**
	 * What lies beside older copies is in this one; what is of another life is not of it.
	 */
	private static boolean isAfter(Path file, CopyNote copy, CopyFolder folder) {
		String name = CopyFolder.nameOf(file);
		if (name.compareTo(copy.name()) < 0) {
			return false;
		}
		try {
			return CopyNote.read(folder.note(name)).life().equals(copy.life());
		}
		catch (IOException ex) {
			// Its copy broke with its note; what was lost is still worth knowing.
			return true;
		}
	}

	/** Where a life comes from that begins with the copy. */
	ServiceLife.Origin origin(CopyNote copy, String folder) {
		Instant seen = this.sign.map(SignOfLife::at).orElse(copy.at());
		long line = this.sign.map((sign) -> sign.head().line()).orElse(copy.head().line());
		LostLine last = this.lines.isEmpty() ? null : this.lines.get(this.lines.size() - 1);
		if (last != null && last.number() > line) {
			return new ServiceLife.Origin(copy.name(), folder, copy.at(), copy.head().line(), last.at(), last.number());
		}
		return new ServiceLife.Origin(copy.name(), folder, copy.at(), copy.head().line(), seen, line);
	}

	private static Collection<LostLine> line(String text) {
		try {
			return text.isBlank() ? List.of() : List.of(JSON.readValue(text, LostLine.class));
		}
		catch (JacksonException ex) {
			return List.of();
		}
	}

}
