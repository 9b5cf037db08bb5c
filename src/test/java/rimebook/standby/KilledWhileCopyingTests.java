package rimebook.standby;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** The power goes while a copy is made, or the place is full: what lies there then. */
class KilledWhileCopyingTests {

	private static final CopyCheck ACCESS = new CopyCheck("rimebook", "");

	private static final int KILLS = 8;

	private final Random random = new Random(20270213);

	@TempDir
	private Path folder;

	private CopyFolder stick;

	@BeforeEach
	void plugIn() throws IOException {
		this.stick = new CopyFolder(Files.createDirectory(this.folder.resolve("stick")));
	}

	/** Another process copies on and on, at random moments of which it is killed. */
	@Test
	void whatCountsAsACopyAfterAKillIsWhole() throws Exception {
		for (int kill = 1; kill <= KILLS; kill++) {
			long before = newestLine();
			Process copying = copyWithoutEnd();
			try {
				Awaitility.await("two copies")
					.atMost(Duration.ofMinutes(1))
					.until(() -> !copying.isAlive() || newestLine() > before + 1);
				TimeUnit.MICROSECONDS.sleep(this.random.nextInt(80_000));
			}
			finally {
				assertThat(copying.isAlive()).as("it copies until it is killed").isTrue();
				copying.destroyForcibly().waitFor();
			}
			expectEachNoteToTellOfAWholeCopy();
		}
		this.stick.thin(Instant.now());
		assertThat(this.stick.files(WholeFile.PART)).as("what was cut short is cleared away").isEmpty();
	}

	private void expectEachNoteToTellOfAWholeCopy() throws IOException {
		List<CopyNote> notes = this.stick.notes();
		for (CopyNote note : notes) {
			assertThat(WholeFile.sha256(this.stick.copy(note.name()))).isEqualTo(note.sha256());
			assertThat(ACCESS.headOf(this.stick.copy(note.name()))).isEqualTo(note.head());
		}
		assertThat(WholeCopies.in(this.stick, ACCESS).newest()).contains(notes.get(0));
		for (CopyNote older : notes.subList(1, notes.size())) {
			Files.delete(this.stick.note(older.name()));
			Files.delete(this.stick.copy(older.name()));
		}
	}

	/** Each moment at which the machine may die, one after the other. */
	@Test
	void untilItsLastStepACopyIsNoneAndThenItIs() throws Exception {
		CopyNote first = copy(Instant.parse("2027-02-13T14:00:00Z"));
		CopyNote second = copy(Instant.parse("2027-02-13T14:00:30Z"));
		byte[] zip = Files.readAllBytes(this.stick.copy(second.name()));
		byte[] note = Files.readAllBytes(this.stick.note(second.name()));
		Path zipPart = part(this.stick.copy(second.name()));
		Path notePart = part(this.stick.note(second.name()));
		Files.delete(this.stick.copy(second.name()));
		Files.delete(this.stick.note(second.name()));
		List<Step> steps = List.of(() -> Files.write(zipPart, half(zip)), () -> Files.write(zipPart, zip),
				() -> Files.move(zipPart, this.stick.copy(second.name())), () -> Files.write(notePart, half(note)),
				() -> Files.write(notePart, note));
		for (Step step : steps) {
			step.take();
			assertThat(WholeCopies.in(this.stick, ACCESS).newest()).contains(first);
		}
		Files.write(this.stick.note(second.name()), half(note));
		assertThat(WholeCopies.in(this.stick, ACCESS).newest()).as("a system that cannot rename").contains(first);
		Files.move(notePart, this.stick.note(second.name()), StandardCopyOption.REPLACE_EXISTING);
		assertThat(WholeCopies.in(this.stick, ACCESS).newest()).contains(second);
	}

	/** Each file is cut off where the disk was full. */
	@Test
	void onAFullDiskNothingHalfDoneCounts() throws Exception {
		CopyNote first = copy(Instant.parse("2027-02-13T14:00:00Z"));
		Instant then = Instant.parse("2027-02-13T14:00:30Z");
		assertThatThrownBy(() -> new CopyFile(this.stick, ACCESS, "one", Pace.NONE).make(then, (part) -> {
			writeHalf(part);
			throw new UncheckedIOException(new IOException("No space left on device"));
		}, (head) -> "")).hasMessageContaining("No space left on device");
		assertThatThrownBy(() -> new CopyFile(this.stick, ACCESS, "one", Pace.NONE).make(then,
				KilledWhileCopyingTests::writeHalf, (head) -> ""))
			.as("an error that nobody told of")
			.isInstanceOf(IOException.class);
		assertThat(names()).containsExactlyInAnyOrder(first.name() + ".zip", first.name() + ".txt");
		Files.createDirectories(part(this.stick.note(CopyFolder.nameOf(then))).resolve("in the way"));
		assertThatThrownBy(() -> copy(then)).as("no room for the note").isInstanceOf(IOException.class);
		assertThat(WholeCopies.in(this.stick, ACCESS).newest()).contains(first);
		Files.writeString(this.stick.since(first.name()), "\n{\"number\":7,\"at\":\"2027-02-13T14:0");
		Files.writeString(this.stick.alive(), "time: 2027-02-13T14:00:31Z\nrecord-line: 9\nreco");
		Since since = Since.read(this.stick, first);
		assertThat(since.lines()).isEmpty();
		assertThat(since.origin(first, "stick").seenLine()).as("no word of a half sign").isEqualTo(first.head().line());
	}

	private CopyNote copy(Instant at) throws Exception {
		try (Copied copied = new Copied(this.folder.resolve("database"))) {
			copied.act();
			return copied.copy(this.stick, at);
		}
	}

	private static void writeHalf(Path part) {
		try {
			Files.writeString(part, "PK half of it");
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private List<String> names() throws IOException {
		try (Stream<Path> files = Files.list(this.stick.path())) {
			return files.map((file) -> file.getFileName().toString()).toList();
		}
	}

	private long newestLine() throws IOException {
		return this.stick.notes().stream().map((note) -> note.head().line()).findFirst().orElse(0L);
	}

	private Process copyWithoutEnd() throws IOException {
		return new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xshare:auto",
				"-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"),
				KilledWhileCopyingTests.class.getName(), this.folder.resolve("database").toString(),
				this.stick.path().toString())
			.redirectErrorStream(true)
			.redirectOutput(this.folder.resolve("copying.log").toFile())
			.start();
	}

	private static Path part(Path file) {
		return new File(file + WholeFile.PART).toPath();
	}

	private static byte[] half(byte[] bytes) {
		return Arrays.copyOf(bytes, bytes.length / 2);
	}

	/** The process that is killed. */
	public static void main(String[] arguments) throws Exception {
		try (Copied copied = new Copied(Path.of(arguments[0]))) {
			while (true) {
				copied.act();
				copied.copy(new CopyFolder(Path.of(arguments[1])), Instant.now());
			}
		}
	}

	/** One moment. */
	private interface Step {

		void take() throws IOException;

	}

	/** A database that has a record and something else in it. */
	private static final class Copied implements AutoCloseable {

		private final Connection connection;

		Copied(Path database) throws SQLException {
			this.connection = DriverManager
				.getConnection("jdbc:h2:file:" + database.toAbsolutePath() + ";WRITE_DELAY=0", "rimebook", "");
			execute("create table if not exists record_head (id int primary key, number bigint, digest varchar(64))");
			execute("create table if not exists filling (text varchar)");
			execute("merge into record_head select 1, coalesce(max(number), 0), 'd' from record_head");
		}

		void act() throws SQLException {
			execute("delete from filling");
			execute("insert into filling select repeat(random_uuid(), 40) from system_range(1, 200)");
			execute("update record_head set number = number + 1, digest = random_uuid()");
		}

		CopyNote copy(CopyFolder stick, Instant at) throws IOException {
			return new CopyFile(stick, ACCESS, "one", Pace.NONE).make(at, this::backup, (head) -> "");
		}

		private void backup(Path part) throws IOException {
			try {
				OnlineBackup.of(this.connection).into(part, Pace.NONE);
			}
			catch (SQLException ex) {
				throw new IllegalStateException(ex);
			}
		}

		private void execute(String sql) throws SQLException {
			try (Statement statement = this.connection.createStatement()) {
				statement.execute(sql);
			}
		}

		@Override
		public void close() throws SQLException {
			this.connection.close();
		}

	}

}
