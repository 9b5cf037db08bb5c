package rimebook.standby;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;

import org.jspecify.annotations.Nullable;

/**
 * Tells whether the second place is still the one that it was: a stick that was pulled
 * out often leaves an empty folder behind, which is on the laptop's own disk.
 */
final class SecondPlace {

	private final CopyFolder folder;

	private final DatabaseFile database;

	private @Nullable FileStore disk;

	SecondPlace(CopyFolder folder, DatabaseFile database) {
		this.folder = folder;
		this.database = database;
	}

	/**
	 * Look whether it is there.
	 * @return whether it lies on the disk of the database
	 * @throws NoSuchFileException if it is not, or if another disk is there
	 */
	boolean require() throws IOException {
		if (!Files.isDirectory(this.folder.path())) {
			throw gone();
		}
		FileStore now = Files.getFileStore(this.folder.path());
		boolean same = now.equals(Files.getFileStore(this.database.folder()));
		if (this.disk != null && same && !this.disk.equals(now)) {
			throw gone();
		}
		this.disk = now;
		return same;
	}

	private NoSuchFileException gone() {
		return new NoSuchFileException(this.folder.path().toString());
	}

}
