package rimebook.rehearsal;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;

/** A rehearsal that is begun at a console, with no real service beside it. */
public final class RehearsalAtConsole {

	private static final int REAL = 8080;

	/** It belongs to no competition of a real service here. */
	private static final UUID NOBODYS = new UUID(0, 0);

	private RehearsalAtConsole() {
	}

	/**
	 * Hold one until somebody presses Enter, the input ends, the process is stopped or
	 * half a day is over.
	 * @param copy puts the archive of the competition into a file
	 * @param port where it answers, or the next that is free; 0 for the usual one
	 * @param in the console
	 * @return what went wrong, empty if nothing did
	 */
	public static String hold(Copy copy, int port, InputStream in, PrintStream out) throws IOException {
		RehearsalSettings settings = new RehearsalSettings(port, Duration.ofHours(12), 256);
		if (FreeMemory.megabytes() < settings.needed()) {
			return "A rehearsal takes about " + settings.needed() + " MB of memory, and this machine has "
					+ FreeMemory.megabytes() + " MB left.";
		}
		RehearsalFolder folder = RehearsalFolder.make();
		Thread stopped = new Thread(() -> deleteAtTheEnd(folder));
		Runtime.getRuntime().addShutdownHook(stopped);
		try {
			folder.note(NOBODYS, 0);
			copy.to(folder.archive());
			String password = Passwords.random(new SecureRandom());
			RehearsalProcess process = RehearsalProcess.start(folder, NOBODYS,
					new RehearsalProcess.Order(settings.freePort(REAL), settings.heap(), password, Map.of()));
			CompletableFuture<Void> longest = new CompletableFuture<Void>().completeOnTimeout(null,
					settings.longest().toMinutes(), TimeUnit.MINUTES);
			return hold(process, password, longest, in, out);
		}
		finally {
			folder.clear();
			out.print("Stopped and deleted.\n");
			Runtime.getRuntime().removeShutdownHook(stopped);
		}
	}

	private static String hold(RehearsalProcess process, String password, CompletableFuture<Void> longest,
			InputStream in, PrintStream out) throws IOException {
		try {
			int port = process.ready().join();
			out.print("The rehearsal answers at http://localhost:" + port + "/desk/rehearsal\n"
					+ "Everybody signs in by their usual name with the password " + password + "\n"
					+ "For a role that nobody has there is a name such as rehearsal-referee.\n"
					+ "Press Enter to end and delete it.\n");
			out.flush();
			CompletableFuture.anyOf(CompletableFuture.runAsync(() -> awaitKey(in)), process.gone(), longest).join();
			return "";
		}
		catch (CompletionException ex) {
			return "The rehearsal did not come up:\n" + String.join("\n", process.lastWords());
		}
		finally {
			process.end();
		}
	}

	private static void awaitKey(InputStream in) {
		try {
			for (int key = in.read(); key >= 0 && key != '\n'; key = in.read()) {
				// Something else was typed.
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static void deleteAtTheEnd(RehearsalFolder folder) {
		try {
			folder.clear();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** Where the archive comes from. */
	@FunctionalInterface
	public interface Copy {

		/** Put it there. */
		void to(Path file) throws IOException;

	}

}
