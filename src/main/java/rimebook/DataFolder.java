package rimebook;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;

/**
 * The folder of an H2 file: codes, digests of passwords and everything else lie there in
 * the clear, so other users of the machine are kept out.
 */
final class DataFolder {

	private static final Log log = LogFactory.getLog(DataFolder.class);

	private static final Pattern FILE = Pattern.compile("jdbc:h2:(?:file:)?(?!mem:|tcp:|ssl:|zip:|nio)([^;]+).*");

	private static final Set<PosixFilePermission> OWN = PosixFilePermissions.fromString("rwx------");

	private DataFolder() {
	}

	/**
	 * Make the folder of the database that the address names, for its owner alone, or
	 * shut one that is there to others. A folder that also holds other things is left as
	 * it is, since somebody else may need it; a warning says so. Does nothing for other
	 * databases and where the file system knows no such permissions.
	 */
	static void keepToOwner(String database) {
		Matcher file = FILE.matcher(database);
		if (file.matches() && FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
			Path path = Path.of(file.group(1).replaceFirst("^~", System.getProperty("user.home"))).toAbsolutePath();
			try {
				keepToOwner(path.normalize());
			}
			catch (IOException ex) {
				log.warn("The data folder " + path.getParent() + " cannot be kept from other users: " + ex);
			}
		}
	}

	private static void keepToOwner(Path file) throws IOException {
		Path folder = Objects.requireNonNull(file.getParent(), "folder");
		if (Files.notExists(folder)) {
			make(folder);
		}
		else if (!Files.getPosixFilePermissions(folder).equals(OWN)) {
			shut(folder, file.getFileName().toString());
		}
	}

	private static void make(Path folder) throws IOException {
		if (folder.getParent() != null) {
			Files.createDirectories(folder.getParent());
		}
		Files.createDirectory(folder, PosixFilePermissions.asFileAttribute(OWN));
	}

	private static void shut(Path folder, String name) throws IOException {
		if (holdsOnly(folder, name)) {
			Files.setPosixFilePermissions(folder, OWN);
			return;
		}
		log.warn("The data folder " + folder + " also holds other things, so other users may open it. "
				+ "Give the database a folder of its own, or take their rights away (chmod 700).");
	}

	private static boolean holdsOnly(Path folder, String name) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.allMatch((file) -> file.getFileName().toString().startsWith(name + "."));
		}
	}

}
