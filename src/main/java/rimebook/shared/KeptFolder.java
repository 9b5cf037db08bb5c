package rimebook.shared;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
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
	 * Bring another folder to what this one has: files that it lacks, and without those
	 * that were deleted here.
	 * @return how many files were copied
	 */
	public int copyTo(Path other) throws IOException {
		if (!Files.isDirectory(this.path)) {
			return 0;
		}
		Files.createDirectories(other);
		int copied = 0;
		for (Path file : files(this.path)) {
			String name = file.getFileName().toString();
			if (name.endsWith(GONE)) {
				Files.deleteIfExists(other.resolve(name.substring(0, name.length() - GONE.length())));
			}
			else if (!name.endsWith(PART) && Files.notExists(other.resolve(name))) {
				copied += copy(file, other.resolve(name)) ? 1 : 0;
			}
		}
		return copied;
	}

	private static boolean copy(Path file, Path to) throws IOException {
		Path part = to.resolveSibling(to.getFileName() + PART);
		try {
			Files.copy(file, part, StandardCopyOption.REPLACE_EXISTING);
			Files.move(part, to, StandardCopyOption.ATOMIC_MOVE);
			return true;
		}
		catch (FileAlreadyExistsException ex) {
			return false;
		}
		finally {
			Files.deleteIfExists(part);
		}
	}

	private static List<Path> files(Path folder) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.filter(Files::isRegularFile).sorted().toList();
		}
	}

	/** A module that has such a folder declares one. */
	public interface Source {

		/** Empty where everything lies in the database. */
		Optional<KeptFolder> folder();

	}

}
