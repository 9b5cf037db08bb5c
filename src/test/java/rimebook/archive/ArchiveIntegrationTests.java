package rimebook.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import javax.sql.DataSource;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.DraftPerson;
import rimebook.accounts.People;
import rimebook.accounts.Role;
import rimebook.audit.ChainCheck;
import rimebook.audit.RecordFinding;
import rimebook.shared.Actor;
import rimebook.testsupport.RequiresPython;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** One database holds several competitions here, as it may in a house. */
@WholeApplication
class ArchiveIntegrationTests {

	private static final String PASSWORD = "drift of dry snow 9";

	@Autowired
	private ApplicationContext context;

	@Autowired
	private DataSource database;

	@TempDir
	Path directory;

	@Test
	void placementJudgingBecomesTheSameCompetitionAgain() throws Exception {
		person();
		staysTheSame(Archives.placement(this.context, 4, 3));
	}

	@Test
	void pointsJudgingBecomesTheSameCompetitionAgain() throws Exception {
		staysTheSame(Archives.points(this.context));
	}

	private void staysTheSame(SmallCompetition competition) throws Exception {
		Archives.placement(this.context, 2, 3);
		Path first = archive(competition, Variant.WHOLE);
		ArchiveCheck.Finding finding = ArchiveCheck.check(first);
		assertThat(finding.faults()).isEmpty();
		assertThat(finding.found()).hasSize(6);
		try (Connection restored = Archives.onH2()) {
			restoresTo(restored, first, competition);
		}
		if (isPostgres()) {
			try (Connection restored = Archives.onPostgres()) {
				restoresTo(restored, first, competition);
			}
		}
	}

	private void restoresTo(Connection restored, Path first, SmallCompetition competition)
			throws SQLException, IOException {
		ArchiveRestore.restore(restored, first);
		Path again = Archives.write(restored, competition, Variant.WHOLE, this.directory.resolve("again.zip"));
		assertThat(Files.readAllBytes(again)).isEqualTo(Files.readAllBytes(first));
		RecordFinding record = ChainCheck.check(restored);
		assertThat(record.isWhole()).isTrue();
		assertThat(record.alone()).isPositive();
		assertThat(record.sentence()).contains("of them only the digest is here");
		assertThat(count(restored, "competition")).isEqualTo(1);
		assertThatThrownBy(() -> ArchiveRestore.restore(restored, first)).isInstanceOf(ArchiveRefusal.class)
			.hasMessageContaining("The database is not empty");
	}

	/** Whatever the crew does between two tables is in all of them or in none. */
	@Test
	void anArchiveShowsOneMomentOfACompetitionThatGoesOn() throws Exception {
		SmallCompetition competition = SmallCompetition.running(this.context, 8, 3);
		competition.open(1);
		Path archive = this.directory.resolve("meanwhile.zip");
		List<Integer> skated = new ArrayList<>();
		try (Connection connection = this.database.getConnection()) {
			ArchiveWriting.write(connection, new ArchiveWriting.Order(competition.competition().id().toString(),
					Variant.WHOLE, Archives.NOW, List.of()), archive, (done, of) -> {
						if (done % 6 == 0 && skated.size() < 8) {
							competition.skateNext(1);
							skated.add(done);
						}
					});
		}
		assertThat(skated).hasSizeGreaterThan(4);
		assertThat(ArchiveCheck.check(archive).faults()).isEmpty();
	}

	private boolean isPostgres() throws SQLException {
		try (Connection connection = this.database.getConnection()) {
			return connection.getMetaData().getURL().startsWith("jdbc:postgresql:");
		}
	}

	private static long count(Connection connection, String table) throws SQLException {
		try (Statement statement = connection.createStatement();
				ResultSet row = statement.executeQuery("select count(*) from " + table)) {
			row.next();
			return row.getLong(1);
		}
	}

	private Path archive(SmallCompetition competition, Variant variant) throws SQLException, IOException {
		try (Connection connection = this.database.getConnection()) {
			return Archives.write(connection, competition, variant, this.directory.resolve(variant + ".zip"));
		}
	}

	private void person() {
		People people = this.context.getBean(People.class);
		if (people.all().stream().noneMatch((known) -> known.displayName().equals("Signe Moss"))) {
			people.add(new DraftPerson("signe", "Signe Moss", Set.of(Role.REFEREE), PASSWORD), Actor.system());
		}
	}

	@Test
	void noPasswordLeavesAndWhoIsRestoredCannotSignIn() throws Exception {
		person();
		Path archive = archive(Archives.placement(this.context, 2, 3), Variant.WHOLE);
		List<String> digests = texts("select password_hash from person where password_hash <> '' "
				+ "union select code_digest from seat_code where code_digest is not null");
		assertThat(digests).isNotEmpty();
		try (ArchiveFile file = ArchiveFile.open(archive)) {
			for (String name : file.names()) {
				String text = file.text(name);
				assertThat(digests).allSatisfy((digest) -> assertThat(text).doesNotContain(digest));
			}
			assertThat(file.text("data/person.json")).contains("Signe Moss");
		}
		try (Connection restored = Archives.onH2(); Statement statement = restored.createStatement()) {
			ArchiveRestore.restore(restored, archive);
			try (ResultSet row = statement
				.executeQuery("select count(*) from person where active or password_hash <> ''")) {
				row.next();
				assertThat(row.getLong(1)).isZero();
			}
		}
	}

	private List<String> texts(String sql) throws SQLException {
		List<String> texts = new ArrayList<>();
		try (Connection connection = this.database.getConnection();
				Statement statement = connection.createStatement();
				ResultSet row = statement.executeQuery(sql)) {
			while (row.next()) {
				texts.add(row.getString(1));
			}
		}
		return texts;
	}

	@Test
	void whatWasChangedAndHashedAnewIsFound() throws Exception {
		SmallCompetition competition = Archives.placement(this.context, 4, 3);
		Path archive = archive(competition, Variant.WHOLE);
		assertThat(ArchiveCheck.check(Archives.forged(archive, (name, text) -> text)).faults()).isEmpty();
		finds(archive, "data/card_submission.json", "\"first_mark\":\\d+", "\"first_mark\":0",
				"is not on that judge's newest card");
		Path points = this.directory.resolve("points.zip");
		try (Connection connection = this.database.getConnection()) {
			Archives.write(connection, Archives.points(this.context), Variant.WHOLE, points);
		}
		finds(points, "data/points_card.json", "(?<one>grades.*?:)-?\\d", "${one}7",
				"is not on that judge's newest card");
		finds(points, "data/called_list.json", "ME4", "ME3", "are not those of the newest called list");
		finds(archive, "index.html", "Team 1", "Team 2", "The file index.html does not say what the data say");
		finds(archive, "results/places.csv", "Team 1", "Team 2", "places.csv does not say what the data say");
		finds(archive, "record/lines.jsonl", "\"actor\":\"[^\"]+\"", "\"actor\":\"Nobody\"",
				"The record is broken at line");
		finds(archive, "record/lines.jsonl", "(?s)^[^\n]+\n", "", "The record is broken at line 1");
		finds(archive, "record/lines.jsonl", "[^\n]+\n$", "", "does not end where the archive says");
	}

	private static void finds(Path archive, String file, String old, String other, String why) throws IOException {
		Path forged = Archives.forged(archive,
				(name, text) -> name.equals(file) ? text.replaceFirst(old, other) : text);
		assertThat(ArchiveCheck.check(forged).faults()).as(file).anySatisfy((fault) -> assertThat(fault).contains(why));
	}

	/** Somebody who makes fingerprints, hashes and seal anew still has to tabulate. */
	@Test
	void aPlaceThatDoesNotFollowIsFound() throws Exception {
		Path archive = archive(Archives.placement(this.context, 4, 3), Variant.WHOLE);
		forgedBody(archive, "\"place\":1,", "\"place\":2,", "does not follow from the marks");
		forgedBody(archive, "\"ordinal\":\"1\"", "\"ordinal\":\"2\"", "does not follow from the marks");
		Path points = archive(Archives.points(this.context), Variant.WHOLE);
		forgedBody(points, "\"mean\":\\d+", "\"mean\":999", "does not follow from the marks");
		forgedBody(points, "\"given\":-?\\d", "\"given\":73", "cannot be tabulated");
	}

	private static void forgedBody(Path archive, String old, String other, String why) throws IOException {
		List<String> digests = new ArrayList<>();
		Path bodies = Archives.forged(archive, (name, text) -> {
			if (!name.startsWith("data/result_version/") || !digests.isEmpty()
					|| text.replaceFirst(old, other).equals(text)) {
				return text;
			}
			digests.add(Sha256.of(text.getBytes(StandardCharsets.UTF_8)));
			digests.add(Sha256.of(text.replaceFirst(old, other).getBytes(StandardCharsets.UTF_8)));
			return text.replaceFirst(old, other);
		});
		assertThat(digests).hasSize(2);
		assertThat(ArchiveCheck.checkFiles(bodies).faults())
			.anySatisfy((fault) -> assertThat(fault).contains("does not have the fingerprint"));
		Path forged = Archives.forged(bodies, (name, text) -> name.equals("data/result_version.json")
				? text.replace(digests.get(0), digests.get(1)) : text);
		assertThat(ArchiveCheck.checkFiles(forged).faults()).anySatisfy((fault) -> assertThat(fault).contains(why));
	}

	/** The record attests cards that do not count, too. */
	@Test
	void aCardThatCountsNowhereIsFound() throws Exception {
		SmallCompetition competition = Archives.placement(this.context, 2, 3);
		Path archive = archive(competition, Variant.WHOLE);
		Path forged = Archives.forged(archive, (name, text) -> name.equals("data/card_submission.json")
				? text.replaceFirst("\"received_at\":\"20", "\"received_at\":\"21") : text);
		assertThat(ArchiveCheck.checkFiles(forged).faults()).isEmpty();
		assertThat(ArchiveCheck.check(forged).faults())
			.anySatisfy((fault) -> assertThat(fault).contains("attests another set of cards and lists"));
	}

	@Test
	void thePublicArchiveHasNoPersonAndIsGood() throws Exception {
		person();
		SmallCompetition competition = Archives.placement(this.context, 3, 3);
		Path archive = archive(competition, Variant.PUBLIC);
		assertThat(ArchiveCheck.check(archive).faults()).isEmpty();
		Set<String> people = new TreeSet<>(texts("select o.name from official o join seat s on s.official_id = o.id "
				+ "join event e on e.id = s.event_id where e.competition_id = '" + competition.competition().id()
				+ "'"));
		people.addAll(List.of("Signe Moss", SmallCompetition.REFEREE.name(), SmallCompetition.SECRETARY.name()));
		assertThat(people).hasSize(7);
		try (ArchiveFile file = ArchiveFile.open(archive)) {
			for (String name : file.names()) {
				String text = file.text(name);
				assertThat(people).as(name).allSatisfy((person) -> assertThat(text).doesNotContain(person));
			}
			assertThat(file.names()).contains("data/result_version.json")
				.doesNotContain("data/person.json", "data/card_submission.json", "data/planned_programme.json");
		}
		try (Connection restored = Archives.onH2()) {
			assertThatThrownBy(() -> ArchiveRestore.restore(restored, archive)).isInstanceOf(ArchiveRefusal.class)
				.hasMessageContaining("This is the public archive");
			assertThat(count(restored, "competition")).isZero();
		}
	}

	@Test
	void thePageShowsEveryResultAndFetchesNothing() throws Exception {
		SmallCompetition competition = Archives.placement(this.context, 4, 3);
		try (ArchiveFile file = ArchiveFile.open(archive(competition, Variant.PUBLIC))) {
			String page = file.text("index.html");
			assertThat(page).doesNotContain("<script", "http:", "https:", "src=");
			assertThat(page.split("<h2 ")).hasSize(4);
			assertThat(page).contains("Team 1", "Team 2", "Team 3", "Team 4", "Judge 3");
			assertThat(page.split("href=\"data/")).hasSize(4);
			assertThat(file.text("results/places.csv").lines()).hasSize(13);
			assertThat(file.text("results/marks.csv").lines()).hasSize(25);
		}
	}

	@Test
	@RequiresPython
	void anyoneChecksItWithPython() throws Exception {
		SmallCompetition competition = Archives.placement(this.context, 4, 3);
		Path folder = Archives.unpacked(archive(competition, Variant.WHOLE), this.directory.resolve("unpacked"));
		assertThat(python(folder)).matches("As it was written: \\d+ lines of the record, head [0-9a-f]{64}; "
				+ "\\d\\d+ places of placement judging follow from the marks.\n");
		Path body;
		try (var bodies = Files.list(folder.resolve("data/result_version"))) {
			body = bodies.findFirst().orElseThrow();
		}
		Files.writeString(body, Files.readString(body) + " ");
		assertThat(python(folder)).startsWith("NOT AS IT WAS WRITTEN: the file data/result_version/");
	}

	private static String python(Path folder) throws IOException {
		Process python = new ProcessBuilder("python3", "verify.py").directory(folder.toFile())
			.redirectErrorStream(true)
			.start();
		return new String(python.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
	}

	@Test
	void whatFailsLeavesNoFileAndNoRow() throws Exception {
		SmallCompetition competition = Archives.placement(this.context, 2, 3);
		try (Connection connection = this.database.getConnection()) {
			assertThatThrownBy(
					() -> Archives.write(connection, "no-such", Variant.WHOLE, this.directory.resolve("x.zip")))
				.isInstanceOf(ArchiveRefusal.class)
				.hasMessageContaining(competition.competition().slug());
		}
		assertThat(this.directory).isEmptyDirectory();
		Path archive = archive(competition, Variant.WHOLE);
		Path forged = Archives.forged(archive, (name, text) -> name.equals("data/card_submission.json")
				? text.replaceFirst("\"received_at\":\"20", "\"received_at\":\"21") : text);
		try (Connection restored = Archives.onH2()) {
			assertThatThrownBy(() -> ArchiveRestore.restore(restored, forged)).isInstanceOf(ArchiveRefusal.class);
			assertThat(count(restored, "competition") + count(restored, "record_line")).isZero();
			ArchiveRestore.restore(restored, archive);
			assertThat(count(restored, "competition")).isEqualTo(1);
		}
	}

	@Test
	void aLaterLayoutAndUnknownTablesAreRefusedInWords() throws Exception {
		Path archive = archive(Archives.placement(this.context, 2, 3), Variant.WHOLE);
		Path later = Archives.forged(archive,
				(name, text) -> name.equals("archive.json") ? text.replace("\"layout\":1", "\"layout\":2") : text);
		assertThat(ArchiveCheck.check(later).faults()).singleElement()
			.asString()
			.contains("layout 2", "Take a newer one");
		Path unknown = Archives.forged(archive,
				(name, text) -> name.equals("schema.json") ? text.replaceFirst("\"club\":", "\"snow\":") : text);
		assertThat(ArchiveCheck.check(unknown).faults()).singleElement().asString().contains("a table 'snow'");
	}

}
