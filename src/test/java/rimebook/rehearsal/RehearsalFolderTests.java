package rimebook.rehearsal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.UUID;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class RehearsalFolderTests {

	private static final UUID COMPETITION = new UUID(1, 2);

	private RehearsalFolder folder;

	@BeforeEach
	void makeOne() throws IOException {
		this.folder = RehearsalFolder.make();
	}

	@AfterEach
	void deleteIt() throws IOException {
		this.folder.delete();
	}

	@Test
	void isItsOwnersAlone() throws IOException {
		assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(this.folder.path())))
			.isEqualTo("rwx------");
	}

	@Test
	void isNoOrphanWhileItsServiceLives() throws IOException {
		assertThat(RehearsalFolder.orphans()).as("one that is just being made").doesNotContain(this.folder);
		this.folder.note(COMPETITION, 0);
		assertThat(RehearsalFolder.orphans()).doesNotContain(this.folder);
		assertThat(this.folder.competition()).hasValue(COMPETITION);
	}

	@Test
	void isFoundWhereItsServiceIsGoneAndItsProcessIsEnded() throws Exception {
		Process left = new ProcessBuilder("sleep", "600").start();
		this.folder.note(COMPETITION, left.pid());
		leaveBehind("owner=" + ProcessHandle.current().pid(), "owner=999999999");
		assertThat(RehearsalFolder.orphans()).contains(this.folder);
		this.folder.clear();
		assertThat(left.waitFor()).isNotZero();
		assertThat(this.folder.path()).doesNotExist();
	}

	/** Process numbers come again. */
	@Test
	void aProcessThatOnlyHasTheSameNumberIsLeftAlone() throws Exception {
		Process other = new ProcessBuilder("sleep", "600").start();
		try {
			this.folder.note(COMPETITION, other.pid());
			leaveBehind("process.since=.*", "process.since=2001-01-01T00\\\\:00\\\\:00Z");
			this.folder.clear();
			assertThat(other.isAlive()).isTrue();
			assertThat(this.folder.path()).doesNotExist();
		}
		finally {
			other.destroyForcibly();
		}
	}

	@Test
	void isDeletedWithAllThatIsInIt() throws IOException {
		Path deep = Files.createDirectories(this.folder.temporary().resolve("a").resolve("b"));
		Files.writeString(deep.resolve("file"), "x");
		this.folder.delete();
		assertThat(this.folder.path()).doesNotExist();
		this.folder.delete();
	}

	private void leaveBehind(String written, String instead) throws IOException {
		Path note = this.folder.path().resolve("whose.properties");
		Files.writeString(note, Files.readString(note).replaceAll(written, instead));
	}

}
