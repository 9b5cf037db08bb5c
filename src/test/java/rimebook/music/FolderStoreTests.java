package rimebook.music;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import rimebook.shared.KeptFolder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class FolderStoreTests {

	/** SHA-256 of "sound": sha256sum of coreutils. */
	private static final String SOUND = "dd29442deca69f52c50006b831cb216edf78a7da33748f0a80ff19f2ebe57ecd";

	private static final long ALL = Long.MAX_VALUE;

	@TempDir
	private Path disk;

	@Test
	void whatIsKeptLiesUnderItsDigest() throws IOException {
		FolderStore store = store();
		MusicStore.Arrived arrived = store.write(bytes("sound"));
		assertThat(arrived).isEqualTo(new MusicStore.Arrived(arrived.part(), SOUND, 5));
		assertThat(store.here(List.of(SOUND))).isEmpty();
		store.keep(arrived);
		store.drop(arrived);
		assertThat(store.here(List.of(arrived.sha256(), "0".repeat(64)))).containsExactly(arrived.sha256());
		assertThat(store.bytes(arrived.sha256(), 5).getContentAsByteArray()).isEqualTo("sound".getBytes());
		assertThat(names(folder())).containsExactly(arrived.sha256());
	}

	@Test
	void whatBreaksOffLeavesNothingBehind() {
		InputStream broken = new InputStream() {

			private int left = 100_000;

			@Override
			public int read() throws IOException {
				if (this.left-- <= 0) {
					throw new IOException("connection closed");
				}
				return 7;
			}

		};
		assertThatExceptionOfType(IOException.class).isThrownBy(() -> store().write(broken));
		assertThat(names(folder())).isEmpty();
	}

	@Test
	void noNameLeadsOutOfTheFolder() {
		assertThatIllegalArgumentException().isThrownBy(() -> store().delete("../rimebook.mv.db"));
		assertThatIllegalArgumentException().isThrownBy(() -> store().here(List.of("/etc/passwd")));
	}

	@Test
	void aCopyGetsWhatIsNewAndLosesWhatWasDeleted() throws IOException {
		FolderStore store = store();
		KeptFolder kept = new KeptFolder("music", folder());
		Path stick = this.disk.resolve("stick");
		assertThat(kept.copyTo(stick, ALL)).isZero();
		assertThat(stick).doesNotExist();
		String first = keep(store, "first");
		String second = keep(store, "second");
		store.write(bytes("not whole yet"));
		assertThat(kept.copyTo(stick, 1)).as("a portion at a time").isEqualTo(1);
		assertThat(names(stick)).hasSize(1);
		assertThat(kept.copyTo(stick, 1)).isZero();
		assertThat(names(stick)).containsExactlyInAnyOrder(first, second);
		assertThat(Files.readString(stick.resolve(first))).isEqualTo("first");
		store.delete(first);
		assertThat(kept.copyTo(stick, ALL)).isZero();
		assertThat(names(stick)).containsExactly(second);
		keep(store, "first");
		assertThat(kept.copyTo(stick, ALL)).isZero();
		assertThat(Files.readString(stick.resolve(first))).isEqualTo("first");
	}

	@Test
	void whatWasDeletedDoesNotComeBackFromACopy() throws IOException {
		FolderStore store = store();
		KeptFolder kept = new KeptFolder("music", folder());
		KeptFolder stick = new KeptFolder("music", this.disk.resolve("stick"));
		String gone = keep(store, "gone");
		String lost = keep(store, "lost");
		kept.copyTo(stick.path(), ALL);
		store.delete(gone);
		Files.delete(folder().resolve(lost));
		assertThat(stick.copyTo(folder(), ALL)).isZero();
		assertThat(store.here(List.of(gone, lost))).containsExactly(lost);
	}

	@Test
	void whatNobodyHandedInToTheEndGoesBeforeAnybodyWrites() throws IOException {
		FolderStore store = store();
		assertThat(store.tidy(Set.of())).as("no folder yet").isZero();
		String known = keep(store, "known");
		String takenBack = keep(store, "taken back");
		String halfDeleted = keep(store, "half deleted");
		Files.createFile(folder().resolve(halfDeleted + KeptFolder.GONE));
		store.write(bytes("half of it"));
		Files.createFile(folder().resolve("README"));
		assertThat(store.tidy(Set.of(known, halfDeleted))).isEqualTo(3);
		assertThat(names(folder())).containsExactlyInAnyOrder(known, takenBack + KeptFolder.GONE,
				halfDeleted + KeptFolder.GONE, "README");
		assertThat(store.tidy(Set.of(known, halfDeleted))).isZero();
		assertThat(store.tidy(Set.of())).as("another database").isZero();
		assertThat(store.here(List.of(known))).containsExactly(known);
	}

	private String keep(FolderStore store, String sound) throws IOException {
		MusicStore.Arrived arrived = store.write(bytes(sound));
		store.keep(arrived);
		return arrived.sha256();
	}

	private FolderStore store() {
		return new FolderStore(folder());
	}

	private Path folder() {
		return this.disk.resolve("rimebook.music");
	}

	private static InputStream bytes(String text) {
		return new ByteArrayInputStream(text.getBytes());
	}

	private static List<String> names(Path folder) {
		if (Files.notExists(folder)) {
			return List.of();
		}
		try (Stream<Path> files = Files.list(folder)) {
			return files.map((file) -> file.getFileName().toString()).toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
