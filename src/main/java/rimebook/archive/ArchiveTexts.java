package rimebook.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** What every archive holds in the same words. */
final class ArchiveTexts {

	private ArchiveTexts() {
	}

	static String readme(Variant variant) {
		return read("README.txt") + ((variant == Variant.PUBLIC) ? "\n" + read("PUBLIC.txt") : "");
	}

	static String python() {
		return read("verify.py");
	}

	private static String read(String name) {
		try (InputStream in = ArchiveTexts.class.getResourceAsStream("/archive/" + name)) {
			return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
