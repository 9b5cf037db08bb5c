package rimebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;

@DisabledOnOs(OS.WINDOWS)
class DataFolderTests {

	@TempDir
	private Path home;

	@Test
	void aNewFolderIsItsOwnersAlone() throws IOException {
		DataFolder.keepToOwner("jdbc:h2:file:" + this.home + "/rink/data/rimebook;WRITE_DELAY=0");
		assertThat(rights("rink/data")).isEqualTo("rwx------");
	}

	@Test
	void anOpenFolderOfTheDatabaseAloneIsShut() throws IOException {
		open("data");
		Files.createFile(this.home.resolve("data/rimebook.mv.db"));
		DataFolder.keepToOwner("jdbc:h2:" + this.home + "/data/rimebook");
		assertThat(rights("data")).isEqualTo("rwx------");
	}

	/** Shutting it could keep others from what is theirs. */
	@Test
	void aFolderThatHoldsOtherThingsStaysOpen() throws IOException {
		open("shared");
		Files.createFile(this.home.resolve("shared/notes.txt"));
		DataFolder.keepToOwner("jdbc:h2:file:" + this.home + "/shared/rimebook");
		assertThat(rights("shared")).isEqualTo("rwxr-xr-x");
	}

	@Test
	void otherDatabasesHaveNoFolder() {
		DataFolder.keepToOwner("");
		DataFolder.keepToOwner("jdbc:h2:mem:whole;LOCK_TIMEOUT=10000");
		DataFolder.keepToOwner("jdbc:h2:tcp://server/~/rimebook");
		DataFolder.keepToOwner("jdbc:postgresql://postgres:5432/rimebook");
		assertThat(this.home).isEmptyDirectory();
	}

	private void open(String folder) throws IOException {
		Path path = Files.createDirectory(this.home.resolve(folder));
		Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rwxr-xr-x"));
	}

	private String rights(String folder) throws IOException {
		return PosixFilePermissions.toString(Files.getPosixFilePermissions(this.home.resolve(folder)));
	}

}
