package rimebook.rehearsal;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * Everything that a rehearsal leaves on the disk, for its owner alone. A note in it says
 * whose it is, so that one that was left behind is found.
 *
 * @param path the folder
 */
record RehearsalFolder(Path path) {

	private static final String NAME = "rimebook-rehearsal-";

	private static final String NOTE = "whose.properties";

	private static final int TRIES = 20;

	/** How far two readings of when a process began may lie apart. */
	private static final Duration READING = Duration.ofMinutes(1);

	/** Make one, where programs keep what is for the moment. */
	static RehearsalFolder make() throws IOException {
		RehearsalFolder made = new RehearsalFolder(Files.createTempDirectory(NAME));
		Files.createDirectory(made.temporary());
		return made;
	}

	Path archive() {
		return this.path.resolve("archive.zip");
	}

	Path database() {
		return this.path.resolve("rehearsal");
	}

	/** For what the process itself would leave elsewhere. */
	Path temporary() {
		return this.path.resolve("tmp");
	}

	/**
	 * Write down who began it and, once there is one, the process.
	 * @param process 0 before there is one
	 */
	void note(UUID competition, long process) throws IOException {
		Properties note = new Properties();
		note.setProperty("competition", competition.toString());
		put(note, "owner", ProcessHandle.current());
		ProcessHandle.of(process).ifPresent((handle) -> put(note, "process", handle));
		Path written = this.path.resolve("note.part");
		try (Writer writer = Files.newBufferedWriter(written)) {
			note.store(writer, null);
		}
		Files.move(written, this.path.resolve(NOTE), StandardCopyOption.REPLACE_EXISTING);
	}

	/** Process numbers come again; with the time of the start they do not. */
	private static void put(Properties note, String who, ProcessHandle process) {
		note.setProperty(who, Long.toString(process.pid()));
		note.setProperty(who + ".since", since(process).toString());
	}

	private static Instant since(ProcessHandle process) {
		return process.info().startInstant().orElse(Instant.EPOCH);
	}

	/** Those whose service is gone: it was killed, and could not delete them. */
	static List<RehearsalFolder> orphans() throws IOException {
		try (Stream<Path> all = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
			return all.filter((folder) -> folder.getFileName().toString().startsWith(NAME))
				.map(RehearsalFolder::new)
				.filter(RehearsalFolder::isOrphaned)
				.toList();
		}
	}

	/** One without a note is being made, or another user's. */
	private boolean isOrphaned() {
		return read().filter((note) -> living(note, "owner").isEmpty()).isPresent();
	}

	/** The competition it was begun with. */
	Optional<UUID> competition() {
		return read().map((note) -> UUID.fromString(note.getProperty("competition")));
	}

	/** End the process that works here, if it lives, and delete everything. */
	void clear() throws IOException {
		read().flatMap((note) -> living(note, "process")).ifPresent(RehearsalFolder::end);
		delete();
	}

	private static void end(ProcessHandle process) {
		process.destroyForcibly();
		process.onExit().join();
	}

	private static Optional<ProcessHandle> living(Properties note, String who) {
		return ProcessHandle.of(Long.parseLong(note.getProperty(who, "0")))
			.filter(ProcessHandle::isAlive)
			.filter((process) -> Duration.between(since(process), Instant.parse(note.getProperty(who + ".since")))
				.abs()
				.compareTo(READING) < 0);
	}

	private Optional<Properties> read() {
		Properties note = new Properties();
		try (Reader reader = Files.newBufferedReader(this.path.resolve(NOTE))) {
			note.load(reader);
			return Optional.of(note);
		}
		catch (IOException ex) {
			return Optional.empty();
		}
	}

	/**
	 * Delete everything, also while a process that is about to end still writes: what
	 * comes while it is deleted is deleted in the next go.
	 */
	void delete() throws IOException {
		for (int tries = TRIES; Files.exists(this.path); tries--) {
			try {
				deleteOnce();
			}
			catch (IOException | UncheckedIOException ex) {
				if (tries == 1) {
					throw new IOException("Not all of " + this.path + " could be deleted", ex);
				}
			}
		}
	}

	private void deleteOnce() throws IOException {
		try (Stream<Path> all = Files.walk(this.path)) {
			for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
				Files.deleteIfExists(file);
			}
		}
		catch (NoSuchFileException ex) {
			// Deleted from the other side meanwhile.
		}
	}

}
