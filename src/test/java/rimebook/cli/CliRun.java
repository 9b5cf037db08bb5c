package rimebook.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import rimebook.RimebookApplication;

/** What a command said on both streams, and its status. */
record CliRun(int status, String out, String err) {

	private static final Path RESOURCES = Path.of("src", "test", "resources", "cli");

	static CliRun of(String... args) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = CommandLine.ofThisJar(RimebookApplication.class).run(List.of(args), stream(out), stream(err));
		return new CliRun(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	private static PrintStream stream(ByteArrayOutputStream bytes) {
		return new PrintStream(bytes, true, StandardCharsets.UTF_8);
	}

	static String file(String name) {
		return RESOURCES.resolve(name).toString();
	}

	static String content(String name) {
		try {
			return Files.readString(RESOURCES.resolve(name));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
