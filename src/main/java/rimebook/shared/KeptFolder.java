package rimebook.shared;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A folder of files beside the database that belongs to it. A file in it has its name
 * from its content, so it is there whole or not at all and is never changed: whoever
 * copies it copies what is new.
 *
 * @param name what the folder is called at the second place
 * @param path where it lies; it may not be there yet
 */
public record KeptFolder(String name, Path path) {

	/** How the name of a file ends that is not whole yet; nobody copies it. */
	public static final String PART = ".part";

	/** How the name of a note ends that says that the file of that name was deleted. */
	public static final String GONE = ".gone";

	/**
	 * Where music lies beside a database file, known before anything opens the database.
	 * @param database the database without its ending
	 */
	public static KeptFolder ofMusic(Path database) {
		return new KeptFolder("music", database.resolveSibling(database.getFileName() + ".music"));
	}

	/**
	 * Bring another folder nearer to what this one has: without those that were deleted
	 * here, and with files that it lacks, one after the other until so many bytes were
	 * copied. What was deleted there stays deleted.
	 * @param most after how many bytes no further file is begun
	 * @return how many files it lacks still
	 */
	public int copyTo(Path other, long most) throws IOException {
		if (!Files.isDirectory(this.path)) {
			return 0;
		}
		if (!Files.isDirectory(other)) {
			// Not those above it: a stick that is gone must not be there again.
			Files.createDirectory(other);
		}
		Set<String> here = names(this.path);
		deleteWhatIsGone(here, other);
		Set<String> there = names(other);
		List<String> lacking = here.stream()
			.filter((name) -> !name.endsWith(PART) && !name.endsWith(GONE))
			.filter((name) -> !here.contains(name + GONE))
			.filter((name) -> !there.contains(name) && !there.contains(name + GONE))
			.toList();
		int copied = 0;
		for (long bytes = 0; copied < lacking.size() && bytes < most; copied++) {
			bytes += copy(this.path.resolve(lacking.get(copied)), other.resolve(lacking.get(copied)));
		}
		return lacking.size() - copied;
	}

	private static void deleteWhatIsGone(Set<String> here, Path other) throws IOException {
		for (String name : here) {
			if (name.endsWith(GONE)) {
				String gone = name.substring(0, name.length() - GONE.length());
				Files.deleteIfExists(other.resolve(gone));
				Files.deleteIfExists(other.resolve(gone + PART));
			}
		}
	}

	/** Named once the disk has it; one that was deleted meanwhile is passed over. */
	private static long copy(Path file, Path to) throws IOException {
		Path part = to.resolveSibling(to.getFileName() + PART);
		try {
			Files.copy(file, part, StandardCopyOption.REPLACE_EXISTING);
			long bytes = force(part);
			Files.move(part, to, StandardCopyOption.ATOMIC_MOVE);
			return bytes;
		}
		catch (NoSuchFileException ex) {
			if (Files.exists(file)) {
				throw ex;
			}
			return 0;
		}
		finally {
			Files.deleteIfExists(part);
		}
	}

	private static long force(Path part) throws IOException {
		try (FileChannel written = FileChannel.open(part, StandardOpenOption.WRITE)) {
			written.force(true);
			return written.size();
		}
	}

	private static Set<String> names(Path folder) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.filter(Files::isRegularFile)
				.map((file) -> file.getFileName().toString())
				.collect(Collectors.toCollection(TreeSet::new));
		}
	}

	/** A module that has such a folder declares one. */
	public interface Source {

		/** Empty where everything lies in the database. */
		Optional<KeptFolder> folder();

	}

}
