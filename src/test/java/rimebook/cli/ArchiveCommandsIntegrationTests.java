package rimebook.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.RimebookApplication;
import rimebook.archive.ArchivedDocument;
import rimebook.archive.ArchivedDocuments;
import rimebook.archive.Variant;
import rimebook.audit.RecordVerification;
import rimebook.competition.Competitions;
import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.RequiresDocker;
import rimebook.testsupport.SmallCompetition;

import static org.assertj.core.api.Assertions.assertThat;

/** The three commands as processes of their own, some of them killed or without room. */
class ArchiveCommandsIntegrationTests {

	private static final int KILLS = Integer.getInteger("rimebook.archive-kills", 1);

	@TempDir
	private static Path shared;

	@TempDir
	private Path directory;

	private static String slug = "";

	/** As the service makes them. */
	private static final Map<String, byte[]> documents = new TreeMap<>();

	@BeforeAll
	static void skate() throws IOException {
		try (ConfigurableApplicationContext running = new SpringApplicationBuilder(RimebookApplication.class)
			.run("--server.port=0", "--spring.datasource.url=" + url(shared.resolve("skated")))) {
			SmallCompetition competition = SmallCompetition.running(running, 5, 3);
			competition.open(1);
			competition.skateRest(1);
			slug = competition.competition().slug();
			for (ArchivedDocument document : running.getBean(ArchivedDocuments.class)
				.of(competition.competition().id(), Variant.WHOLE)) {
				documents.put("documents/" + document.name(), document.content().bytes());
			}
		}
	}

	private static String url(Path database) {
		return "jdbc:h2:file:" + database + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";
	}

	@Test
	void archivesChecksAndRestores() throws Exception {
		Path file = this.directory.resolve("one.zip");
		CliRun written = CliRun.of("archive", slug, file.toString(), "--url", url(shared.resolve("skated")));
		assertThat(written.err()).isEmpty();
		assertThat(written.out()).isEqualTo("Written: " + file + "\n");
		assertThat(written.status()).isZero();
		CliRun checked = CliRun.of("verify-archive", file.toString());
		assertThat(checked.out()).contains("The record is whole", "published versions have their fingerprints",
				"follow from the marks", "what the record tells");
		assertThat(checked.status()).isZero();
		Path database = this.directory.resolve("restored");
		CliRun restored = CliRun.of("restore", file.toString(), "--url", url(database));
		assertThat(restored.err()).isEmpty();
		assertThat(restored.status()).isZero();
		assertThat(CliRun.of("verify-record", "--url", url(database)).status()).isZero();
		hasTheServicesDocuments(file);
		CliRun twice = CliRun.of("restore", file.toString(), "--url", url(database));
		assertThat(twice.err()).contains("The database is not empty", "Nothing was restored.");
		assertThat(twice.status()).isEqualTo(2);
		startsFrom(database);
	}

	private static void hasTheServicesDocuments(Path archive) throws IOException {
		Map<String, byte[]> written = new TreeMap<>();
		try (ZipFile zip = new ZipFile(archive.toFile())) {
			for (ZipEntry entry : Collections.list(zip.entries())) {
				if (entry.getName().startsWith("documents/")) {
					written.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
				}
			}
		}
		assertThat(written.keySet()).isNotEmpty().isEqualTo(documents.keySet());
		written.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(documents.get(name)));
	}

	/** The service opens what was restored, and offers the way in. */
	private static void startsFrom(Path database) {
		try (ConfigurableApplicationContext running = new SpringApplicationBuilder(RimebookApplication.class)
			.run("--server.port=0", "--spring.datasource.url=" + url(database))) {
			assertThat(running.getBean(Competitions.class).all()).singleElement()
				.satisfies((competition) -> assertThat(competition.slug()).isEqualTo(slug));
			assertThat(running.getBean(RecordVerification.class).verify().isWhole()).isTrue();
		}
	}

	@Test
	void saysWhatItCannotDo() throws Exception {
		CliRun none = CliRun.of("archive", "no-such", this.directory.resolve("x.zip").toString(), "--url",
				url(shared.resolve("skated")));
		assertThat(none.err()).contains("There is no competition 'no-such'", slug);
		assertThat(none.status()).isEqualTo(2);
		assertThat(this.directory).isEmptyDirectory();
		CliRun nowhere = CliRun.of("archive", slug, this.directory.resolve("no/x.zip").toString(), "--url",
				url(shared.resolve("skated")));
		assertThat(nowhere.err()).contains("cannot be written: there is no such folder. There is no archive.");
		Path text = Files.writeString(this.directory.resolve("text.zip"), "no archive");
		CliRun foreign = CliRun.of("verify-archive", text.toString());
		assertThat(foreign.out()).contains("NOT GOOD: The file is no archive of Rimebook");
		assertThat(foreign.status()).isEqualTo(1);
		assertThat(CliRun.of("verify-archive", "nowhere.zip").status()).isEqualTo(2);
		assertThat(CliRun.of("restore", text.toString(), "--url", url(this.directory.resolve("r"))).out())
			.contains("Nothing was restored.");
		assertThat(this.directory.resolve("r.mv.db")).doesNotExist();
		assertThat(CliRun.of("archive").err()).contains("it takes a competition and a file");
	}

	/** Killed at some moment, an archive is there and good, or is not there. */
	@Test
	void killedWhileArchivingLeavesNothingThatLooksWhole() throws Exception {
		Random random = new Random(1);
		Path file = this.directory.resolve("killed.zip");
		for (int i = 0; i < KILLS; i++) {
			Files.deleteIfExists(file);
			Process process = start(List.of(), "archive", slug, file.toString(), "--without-documents", "--url",
					url(shared.resolve("skated")));
			process.waitFor(300 + random.nextInt(2500), TimeUnit.MILLISECONDS);
			process.destroyForcibly().waitFor();
			if (Files.exists(file)) {
				assertThat(CliRun.of("verify-archive", file.toString()).status()).isZero();
			}
			for (Path part : parts()) {
				assertThat(CliRun.of("verify-archive", part.toString()).status())
					.as("%s of %d bytes", part, Files.size(part))
					.isEqualTo(isSealed(part) ? 0 : 1);
				Files.delete(part);
			}
		}
	}

	/** Killed after the last byte and before it had its name. */
	private static boolean isSealed(Path part) throws IOException {
		byte[] bytes = Files.readAllBytes(part);
		return new String(bytes, StandardCharsets.ISO_8859_1).matches("(?s).*SHA-256 of all before: [0-9a-f]{64}");
	}

	private List<Path> parts() throws IOException {
		try (Stream<Path> files = Files.list(this.directory)) {
			return files.filter((file) -> file.toString().endsWith(".part")).toList();
		}
	}

	/** Killed at some moment, a database has all of it or nothing. */
	@Test
	void killedWhileRestoringLeavesAllOrNothing() throws Exception {
		for (int i = 0; i < KILLS; i++) {
			Path database = this.directory.resolve("killed" + i);
			killedWhileRestoring(new Target(url(database), "rimebook", ""), new Random(i));
		}
	}

	@Test
	@RequiresDocker
	void killedWhileRestoringIntoPostgresLeavesAllOrNothing() throws Exception {
		for (int i = 0; i < KILLS; i++) {
			PostgresDatabase made = PostgresDatabase.create();
			killedWhileRestoring(new Target(made.url(), made.username(), made.password()), new Random(i));
		}
	}

	private void killedWhileRestoring(Target target, Random random) throws Exception {
		Path file = archived();
		assertThat(CliRun.of(target.with("restore", cut(file))).status()).isEqualTo(1);
		Process process = start(List.of(), target.with("restore", file.toString()));
		process.waitFor(1500 + random.nextInt(4000), TimeUnit.MILLISECONDS);
		process.destroyForcibly().waitFor();
		CliRun again = CliRun.of(target.with("restore", file.toString()));
		assertThat(again.status()).as(again.err()).isIn(0, 2);
		assertThat(again.err()).contains((again.status() == 0) ? "" : "The database is not empty");
		assertThat(CliRun.of(target.with("verify-record")).status()).isZero();
		assertThat(target.count("competition")).isEqualTo(1);
		System.out.println("Restored " + ((again.status() == 0) ? "after" : "before") + " a kill while restoring");
	}

	private String cut(Path file) throws IOException {
		Path cut = this.directory.resolve("cut.zip");
		byte[] bytes = Files.readAllBytes(file);
		Files.write(cut, Arrays.copyOf(bytes, bytes.length / 2));
		return cut.toString();
	}

	private Path archived() {
		Path file = this.directory.resolve("whole.zip");
		assertThat(CliRun
			.of("archive", slug, file.toString(), "--without-documents", "--url", url(shared.resolve("skated")))
			.status()).isZero();
		return file;
	}

	/** A limit on the size of files is met like a full disk: a write fails half way. */
	@Test
	void withoutRoomThereIsNoArchive() throws Exception {
		Path file = this.directory.resolve("full.zip");
		Process process = start(List.of("sh", "-c", "ulimit -f 20; exec \"$@\"", "sh"), "archive", slug,
				file.toString(), "--without-documents", "--url",
				"jdbc:h2:file:" + shared.resolve("skated") + ";ACCESS_MODE_DATA=r");
		String said = new String(process.getInputStream().readAllBytes());
		assertThat(process.waitFor()).as(said).isEqualTo(2);
		assertThat(said).contains("cannot be written: there is no room left on the disk. There is no archive.");
		assertThat(this.directory).isEmptyDirectory();
	}

	@Test
	void withoutRoomNothingIsRestored() throws Exception {
		Path file = archived();
		for (int blocks : new int[] { 3, 400 }) {
			Path database = this.directory.resolve("full" + blocks);
			Process process = start(List.of("sh", "-c", "ulimit -f " + blocks + "; exec \"$@\"", "sh"), "restore",
					file.toString(), "--url", url(database));
			String said = new String(process.getInputStream().readAllBytes());
			assertThat(process.waitFor()).as(said).isEqualTo(2);
			assertThat(said).contains("there is no room left on the disk. Nothing was restored.")
				.doesNotContain("Restored into");
		}
		assertThat(this.directory).isDirectoryNotContaining((left) -> !left.equals(file));
		assertThat(CliRun.of("restore", file.toString(), "--url", url(this.directory.resolve("full3"))).status())
			.isZero();
	}

	private static Process start(List<String> before, String... args) throws IOException {
		List<String> command = new ArrayList<>(before);
		command.addAll(List.of("java", "-XX:-UsePerfData", "-XX:TieredStopAtLevel=1", "-cp",
				System.getProperty("java.class.path"), RimebookApplication.class.getName()));
		command.addAll(List.of(args));
		return new ProcessBuilder(command).redirectErrorStream(true).start();
	}

	/** A database to restore into. */
	private record Target(String url, String user, String password) {

		String[] with(String... command) {
			List<String> all = new ArrayList<>(List.of(command));
			all.addAll(List.of("--url", this.url, "--user", this.user, "--password=" + this.password));
			return all.toArray(String[]::new);
		}

		long count(String table) throws SQLException {
			try (Connection connection = DriverManager.getConnection(this.url, this.user, this.password);
					Statement statement = connection.createStatement();
					ResultSet row = statement.executeQuery("select count(*) from " + table)) {
				row.next();
				return row.getLong(1);
			}
		}

	}

}
