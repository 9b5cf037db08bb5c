package rimebook.archive;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A file of H2 that is made beside its place and gets its name once it is whole. H2
 * commits every table that is made on its own: a file in which that was interrupted,
 * killed or without room, could neither be used nor be tried again.
 */
public final class DatabaseBeside implements AutoCloseable {

	/**
	 * A file of this machine by its path; other words before a colon are other places.
	 */
	private static final Pattern ADDRESS = Pattern
		.compile("jdbc:h2:(?:file:)?(?<path>(?![a-zA-Z]{2,}:)[^;]+)(?<rest>.*)", Pattern.DOTALL);

	private static final String BESIDE = "-being-restored";

	private static final String FILE = ".mv.db";

	/** H2 would write its traces beside the file, later than it could be cleared away. */
	private static final String UNTRACED = "TRACE_LEVEL_FILE=";

	private final String url;

	private final Path part;

	private final Path place;

	private DatabaseBeside(String path, String rest) {
		this.url = "jdbc:h2:file:" + path + BESIDE + rest
				+ (rest.toUpperCase(Locale.ROOT).contains(UNTRACED) ? "" : ";" + UNTRACED + "0");
		Path database = Path.of(path.replaceFirst("^~", Matcher.quoteReplacement(System.getProperty("user.home"))))
			.toAbsolutePath();
		this.part = Path.of(database + BESIDE + FILE);
		this.place = Path.of(database + FILE);
	}

	/**
	 * Begin one, without what an earlier one left that was killed.
	 * @param url where it is to be
	 * @return empty where that is no file that can be put there: in place then
	 * @throws ArchiveRefusal if another process is just making it
	 */
	public static Optional<DatabaseBeside> of(String url) throws IOException {
		Matcher address = ADDRESS.matcher(url);
		if (!address.matches() || address.group("rest").toUpperCase(Locale.ROOT).contains("AUTO_SERVER=")) {
			return Optional.empty();
		}
		DatabaseBeside beside = new DatabaseBeside(address.group("path"), address.group("rest"));
		beside.requireUnused();
		beside.close();
		return Optional.of(beside);
	}

	/** H2 locks its file for as long as it is open. */
	private void requireUnused() throws IOException {
		if (!Files.exists(this.part)) {
			return;
		}
		try (FileChannel file = FileChannel.open(this.part, StandardOpenOption.WRITE); FileLock lock = file.tryLock()) {
			if (lock == null) {
				throw new ArchiveRefusal("Another command is just restoring into this database.");
			}
		}
	}

	/** The address at which it is made. */
	public String url() {
		return this.url;
	}

	/**
	 * Put it in its place, once it is closed; what is there is replaced.
	 * @throws ArchiveRefusal if that cannot be done
	 */
	public void takePlace() {
		try {
			force();
			Files.move(this.part, this.place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
		}
		catch (IOException ex) {
			throw new ArchiveRefusal(
					"The database cannot be put in its place: " + NoRoom.or(ex, String.valueOf(ex.getMessage())) + ".",
					ex);
		}
		SealedZip.forceDirectory(this.place);
	}

	private void force() throws IOException {
		try (FileChannel file = FileChannel.open(this.part, StandardOpenOption.WRITE)) {
			file.force(true);
		}
	}

	/** Leave nothing of it that did not take its place. */
	@Override
	public void close() throws IOException {
		Files.deleteIfExists(this.part);
	}

}
