package rimebook.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.RimebookApplication;
import rimebook.accounts.DraftPerson;
import rimebook.accounts.People;
import rimebook.accounts.Role;
import rimebook.shared.Actor;

import static org.assertj.core.api.Assertions.assertThat;

class VerifyRecordCommandIntegrationTests {

	@TempDir
	private Path directory;

	@Test
	void readsTheRecordOfAStoppedRimebook() throws Exception {
		try (ConfigurableApplicationContext running = start()) {
			running.getBean(People.class).add(draft("ada", "Ada Office"), Actor.system());
			running.getBean(People.class).add(draft("rune", "Rune Frost"), Actor.system());
			CliRun inUse = verifyInAnotherProcess();
			assertThat(inUse.status()).isEqualTo(2);
			assertThat(inUse.out()).isEmpty();
			assertThat(inUse.err()).contains("a running Rimebook uses this database", "/desk/record");
		}
		CliRun whole = verify();
		assertThat(whole.out()).matches("The record is whole: 2 lines, head [0-9a-f]{64}\nWhat is stored is what the "
				+ "lines tell: 0 published versions, 0 signatures, 2 things that lines attest were compared.\n"
				+ "Nothing that was kept elsewhere was compared: written anew as a whole, .*\n");
		assertThat(whole.err()).isEmpty();
		assertThat(whole.status()).isZero();
		findsTheHead(whole.out().replaceAll("(?s).*head ([0-9a-f]{64}).*", "$1"));
		comparesAnchors(whole.out().replaceAll("(?s).*head ([0-9a-f]{64}).*", "$1"));
		findsWhatIsStored();
		tamper("drop trigger record_line_stays", "update record_line set actor = 'Somebody Else' where number = 2");
		CliRun broken = verify();
		assertThat(broken.out()).isEqualTo("The record is broken at line 2: it was changed after it was written. "
				+ "1 line before it is as it was written.\n");
		assertThat(broken.status()).isEqualTo(1);
	}

	private void findsTheHead(String head) {
		CliRun same = verify("--expect-head", head.toUpperCase(Locale.ROOT));
		assertThat(same.out())
			.contains("The expected head is that of line 2: up to there the record is as it was then, "
					+ "and nothing was written since.");
		assertThat(same.status()).isZero();
		assertThat(verify("--expect-head=" + head.substring(0, 12) + "…").status()).isZero();
		CliRun other = verify("--expect-head", "0123456789abcdef");
		assertThat(other.out()).contains("The expected head is not that of any line");
		assertThat(other.status()).isEqualTo(1);
		assertThat(verify("--expect-head", "of line 2").err()).contains("12 to 64 of 0-9 and a-f");
		assertThat(verify("--expect-head", "of line 2").status()).isEqualTo(2);
	}

	private void comparesAnchors(String head) throws Exception {
		CliRun fits = verify("--anchors", file("seen.txt", "# by a tablet\n\nline 2 " + head + " # its head\n"));
		assertThat(fits.out()).contains("1 anchor fits, the newest that of line 2: lines 1 to 2 are as they were when "
				+ "it was given out, and with them 0 of 0 published versions. No line came after it.");
		assertThat(fits.out()).doesNotContain("Nothing that was kept");
		assertThat(fits.status()).isZero();
		readsTheNotesOfASecondPlace(head);
		CliRun other = verify("--anchors",
				file("seen.txt", "line 1 " + head + "\nline 2 " + head + "\nline 7 " + head));
		assertThat(other.out()).contains("1 anchor fits",
				"  The anchor of line 1, " + head.substring(0, 16)
						+ "…, is not that of the line which stands there now",
				"  The anchor of line 7, ", "is of a line that is not there");
		assertThat(other.status()).isEqualTo(1);
		assertThat(verify("--anchors", file("seen.txt", "")).out()).contains("No anchor fits");
		assertThat(verify("--anchors", file("seen.txt", "")).status()).isEqualTo(1);
		CliRun unreadable = verify("--anchors", file("seen.txt", "line 2 " + head + "\nnonsense\n"));
		assertThat(unreadable.err()).contains("seen.txt", "line 2 is no anchor");
		assertThat(unreadable.status()).isEqualTo(2);
		assertThat(verify("--anchors", "nowhere.txt").err()).contains("nowhere.txt", "cannot be read");
		believesOnlyTheKey(head);
	}

	private void readsTheNotesOfASecondPlace(String head) throws Exception {
		Path place = Files.createDirectory(this.directory.resolve("stick"));
		Files.writeString(place.resolve("rimebook-alive.txt"),
				"time: 2027-02-13T14:02:00Z\nrecord-line: 2\nrecord-head: " + head + "\nlife: one\nanchor: line 2 "
						+ head + "\n");
		Files.writeString(place.resolve("rimebook-20270213T140200.000Z.zip"), "no anchors");
		for (Path one : List.of(place, place.resolve("rimebook-alive.txt"))) {
			CliRun fits = verify("--anchors", one.toString());
			assertThat(fits.out()).contains("1 anchor fits, the newest that of line 2");
			assertThat(fits.status()).isZero();
		}
	}

	private void believesOnlyTheKey(String head) throws Exception {
		Path key = this.directory.resolve("record.key");
		assertThat(CliRun.of("record-key", key.toString()).out()).startsWith("-----BEGIN PUBLIC KEY-----");
		assertThat(CliRun.of("record-key", key.toString()).status()).isEqualTo(2);
		String anchors = file("seen.txt", "line 2 " + head);
		CliRun unsigned = verify("--anchors", anchors, "--public-key", key + ".pub");
		assertThat(unsigned.out()).contains("No anchor fits", "has no signature of that key");
		assertThat(unsigned.status()).isEqualTo(1);
		CliRun foreign = verify("--anchors", anchors, "--public-key", file("some.pub", "nothing"));
		assertThat(foreign.err()).contains("it has no block \"PUBLIC KEY\"");
		assertThat(foreign.status()).isEqualTo(2);
	}

	private String file(String name, String text) throws Exception {
		return Files.writeString(this.directory.resolve(name), text).toString();
	}

	/** A version that the service never published. */
	private void findsWhatIsStored() throws SQLException {
		tamper("insert into result_version (id, scope, scope_id, number, state, cause, note, published_at, "
				+ "fingerprint, body) values (random_uuid(), 'SEGMENT', random_uuid(), 1, 'PROVISIONAL', 'POSTED', '', "
				+ "current_timestamp, 'f', 'b')");
		CliRun forged = verify();
		assertThat(forged.out()).contains("What is stored is not what the lines tell, in 2 places.",
				": its body was changed after it was published.",
				": no line of the record tells of it as it is stored.");
		assertThat(forged.status()).isEqualTo(1);
	}

	@Test
	void makesNoDatabaseWhereNoneIs() {
		CliRun run = verify();
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.out()).isEmpty();
		assertThat(run.err()).contains("there is no database here");
		assertThat(this.directory).isEmptyDirectory();
	}

	@Test
	void saysThatAForeignDatabaseHoldsNoRecord() throws SQLException {
		tamper("create table other (id int)");
		CliRun run = verify();
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.err()).contains("holds no record");
	}

	@Test
	void refusesWhatItDoesNotKnow() {
		assertThat(CliRun.of("verify-record", "--what", "x").err()).contains("there is no option '--what'");
		assertThat(CliRun.of("verify-record", "file").status()).isEqualTo(2);
		assertThat(CliRun.of("verify-record", "--help").out())
			.startsWith("usage: java -jar rimebook.jar verify-record");
	}

	@Test
	void findsTheDatabaseAsTheServiceDoes() throws Exception {
		assertThat(address(List.of(), Map.of()).url()).startsWith("jdbc:h2:file:./data/rimebook");
		assertThat(address(List.of(), Map.of()).user()).isEqualTo("rimebook");
		Files.writeString(this.directory.resolve("application.properties"), "spring.datasource.url=jdbc:beside:x\n");
		assertThat(address(List.of(), Map.of()).url()).isEqualTo("jdbc:beside:x");
		Map<String, String> environment = Map.of("SPRING_DATASOURCE_URL", "jdbc:environment:x");
		assertThat(address(List.of(), environment).url()).isEqualTo("jdbc:environment:x");
		assertThat(address(List.of("--url", "jdbc:typed:x;PASSWORD=p"), environment).toString())
			.isEqualTo("jdbc:typed:x");
	}

	private DatabaseAddress address(List<String> args, Map<String, String> environment) {
		return DatabaseAddress.of(Arguments.of(new VerifyRecordCommand().spec(), args), environment, this.directory);
	}

	/** Within one process H2 shares what is open; two processes exclude each other. */
	private CliRun verifyInAnotherProcess() throws Exception {
		Path java = Path.of(System.getProperty("java.home"), "bin", "java");
		Process process = new ProcessBuilder(java.toString(), "-XX:TieredStopAtLevel=1", "-cp",
				System.getProperty("java.class.path"), RimebookApplication.class.getName(), "verify-record", "--url",
				url(), "--user", "rimebook", "--password=")
			.start();
		String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
		return new CliRun(process.waitFor(), out, err);
	}

	private CliRun verify(String... more) {
		List<String> arguments = new ArrayList<>(
				List.of("verify-record", "--url", url(), "--user", "rimebook", "--password", ""));
		arguments.addAll(List.of(more));
		return CliRun.of(arguments.toArray(String[]::new));
	}

	private ConfigurableApplicationContext start() {
		return new SpringApplicationBuilder(RimebookApplication.class).run("--server.port=0",
				"--spring.datasource.url=" + url());
	}

	private void tamper(String... statements) throws SQLException {
		try (Connection connection = DriverManager.getConnection(url(), "rimebook", "");
				Statement statement = connection.createStatement()) {
			for (String sql : statements) {
				statement.execute(sql);
			}
		}
	}

	private String url() {
		return "jdbc:h2:file:" + this.directory.resolve("rimebook") + ";DB_CLOSE_ON_EXIT=FALSE";
	}

	private static DraftPerson draft(String signInName, String displayName) {
		return new DraftPerson(signInName, displayName, Set.of(Role.REFEREE), "ice lantern rime book");
	}

}
