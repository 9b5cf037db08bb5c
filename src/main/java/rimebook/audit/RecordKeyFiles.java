package rimebook.audit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Writes the two files of a new key. */
public final class RecordKeyFiles {

	private RecordKeyFiles() {
	}

	/**
	 * Make a key: both halves in the file, which only its owner may read where the disk
	 * knows owners, and the public half in another with {@code .pub} behind its name.
	 * @return the public key as PEM
	 * @throws IOException if either file is there already or cannot be written
	 */
	public static String make(Path file) throws IOException {
		RecordKey key = RecordKey.make();
		Path open = file.resolveSibling(file.getFileName() + ".pub");
		Files.writeString(open, key.publicPem(), StandardCharsets.US_ASCII, StandardOpenOption.CREATE_NEW);
		try {
			Files.createFile(file, onlyForItsOwner());
			Files.writeString(file, key.bothPem(), StandardCharsets.US_ASCII);
		}
		catch (IOException ex) {
			Files.delete(open);
			throw ex;
		}
		return key.publicPem();
	}

	private static FileAttribute<?>[] onlyForItsOwner() {
		return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
				? new FileAttribute<?>[] {
						PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")) }
				: new FileAttribute<?>[0];
	}

}
