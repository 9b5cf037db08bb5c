package rimebook.documents;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import javax.sql.DataSource;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.RimebookApplication;
import rimebook.archive.ArchiveCheck;
import rimebook.archive.ArchiveDatabase;
import rimebook.archive.ArchiveRestore;
import rimebook.archive.ArchiveWriting;
import rimebook.archive.ArchivedDocument;
import rimebook.archive.DocumentsAside;
import rimebook.archive.Variant;
import rimebook.competition.CompetitionId;
import rimebook.entries.EntryView;
import rimebook.panels.SeatView;
import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.RequiresDocker;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.documents.PrintedText.words;

@WholeApplication
class ArchivedSheetsIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private DataSource database;

	@TempDir
	private Path directory;

	/** A day on which there is one of each, but for certificates. */
	private PaperDay told() {
		PaperDay day = PaperDay.placement(this.context);
		day.rule();
		day.post();
		day.protest();
		return day;
	}

	@Test
	void anArchiveHasEachDocumentAndIsGood() throws Exception {
		PaperDay day = told();
		Path archive = write(this.database.getConnection(), this.context, day, Variant.WHOLE);
		assertThat(ArchiveCheck.check(archive).faults()).isEmpty();
		Map<String, byte[]> sheets = documents(archive);
		assertThat(sheets.keySet()).allMatch((name) -> name.startsWith("documents/" + day.small.event().slug() + "/"));
		for (DocumentRef ref : this.context.getBean(Documents.class).offered(day.small.event())) {
			assertThat(sheets.keySet()).as(ref.kind().word()).anyMatch((name) -> name.contains(ref.kind().word()));
		}
		assertThat(PrintedText.of(sheet(sheets, "entry-list"))).contains("Record:line", "Asof");
	}

	@Test
	void theyAreTheSameWhenTheyAreMadeLaterAndOnlyTheRecordGrew() throws IOException {
		PaperDay day = told();
		Map<String, byte[]> before = made(this.context, day.small.competition().id(), Variant.WHOLE);
		SmallCompetition.running(this.context, 2, 3);
		assertSame(made(this.context, day.small.competition().id(), Variant.WHOLE), before);
	}

	/** From H2 to PostgreSQL, with a service that has another address. */
	@Test
	@RequiresDocker
	void theyAreTheSameFromWhatWasRestored() throws Exception {
		PaperDay day = told();
		Path archive = write(this.database.getConnection(), this.context, day, Variant.WHOLE);
		Map<DocumentRef, byte[]> printed = printed(this.context, day);
		PostgresDatabase restored = PostgresDatabase.create();
		ArchiveDatabase.prepare(restored.url(), restored.username(), restored.password());
		try (Connection connection = DriverManager.getConnection(restored.url(), restored.username(),
				restored.password())) {
			ArchiveRestore.restore(connection, archive);
			try (ConfigurableApplicationContext other = new SpringApplicationBuilder(RimebookApplication.class).run(
					"--server.port=0", "--spring.datasource.url=" + restored.url(),
					"--spring.datasource.username=" + restored.username(),
					"--spring.datasource.password=" + restored.password(),
					"--rimebook.slips.address=http://10.1.2.3:8080")) {
				assertSame(made(other, day.small.competition().id(), Variant.WHOLE), documents(archive));
				assertSame(madeAside(connection, restored, day), documents(archive));
				printed.forEach((ref, pdf) -> assertThat(print(other, ref)).as(ref.kind().word()).isEqualTo(pdf));
			}
		}
	}

	/** As the command makes them while a service runs. */
	private static Map<String, byte[]> madeAside(Connection connection, PostgresDatabase database, PaperDay day)
			throws Exception {
		Map<String, byte[]> made = new LinkedHashMap<>();
		try (DocumentsAside aside = new DocumentsAside(RimebookApplication.class, database.url(), database.username(),
				database.password())) {
			ArchiveWriting.Order bare = new ArchiveWriting.Order(day.small.competition().slug(), Variant.WHOLE,
					Instant.EPOCH, List.of());
			for (ArchivedDocument document : aside.addedTo(bare, connection).documents()) {
				made.put("documents/" + document.name(), document.content().bytes());
			}
		}
		return made;
	}

	/** What the desk prints of a version. */
	private static Map<DocumentRef, byte[]> printed(ApplicationContext service, PaperDay day) {
		return service.getBean(Documents.class)
			.offered(day.small.event())
			.stream()
			.filter((ref) -> ref.version() > 0)
			.collect(Collectors.toMap((ref) -> ref, (ref) -> print(service, ref)));
	}

	private static byte[] print(ApplicationContext service, DocumentRef ref) {
		return service.getBean(Documents.class).print(ref, PaperSize.LETTER, Locale.FRENCH).bytes();
	}

	@Test
	void thePublicOneHasResultsWithoutTheNamesOfOfficials() throws Exception {
		PaperDay day = PaperDay.points(this.context);
		day.sign();
		Path archive = write(this.database.getConnection(), this.context, day, Variant.PUBLIC);
		assertThat(ArchiveCheck.check(archive).faults()).isEmpty();
		Map<String, byte[]> sheets = documents(archive);
		assertThat(sheets).hasSize(6);
		List<SeatView> seats = day.small.seats();
		for (Map.Entry<String, byte[]> sheet : sheets.entrySet()) {
			String text = PrintedText.of(sheet.getValue());
			assertThat(text).as(sheet.getKey())
				.doesNotContain(words(SmallCompetition.REFEREE.name()), words(SmallCompetition.ACCOUNTANT.name()))
				.doesNotContain(seats.stream().map((seat) -> words(seat.official().name())).toList());
			for (EntryView entry : day.small.entries()) {
				assertThat(text).as(sheet.getKey()).contains(words(entry.team().name()));
			}
		}
		assertThat(PrintedText.of(sheet(sheets, "segment-result"))).contains("Official", "Posted");
	}

	private Path write(Connection connection, ApplicationContext service, PaperDay day, Variant variant)
			throws Exception {
		CompetitionId id = day.small.competition().id();
		Path file = this.directory.resolve(variant + ".zip");
		try (connection) {
			ArchiveWriting.write(connection,
					new ArchiveWriting.Order(id.toString(), variant, Instant.EPOCH,
							service.getBean(ArchivedSheets.class).of(id, variant)),
					file, ArchiveWriting.Progress.UNSEEN);
		}
		return file;
	}

	private static Map<String, byte[]> made(ApplicationContext service, CompetitionId competition, Variant variant)
			throws IOException {
		Map<String, byte[]> made = new LinkedHashMap<>();
		for (ArchivedDocument document : service.getBean(ArchivedSheets.class).of(competition, variant)) {
			made.put("documents/" + document.name(), document.content().bytes());
		}
		return made;
	}

	private static Map<String, byte[]> documents(Path archive) throws IOException {
		Map<String, byte[]> documents = new TreeMap<>();
		try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(archive))) {
			for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
				if (entry.getName().startsWith("documents/")) {
					documents.put(entry.getName(), zip.readAllBytes());
				}
			}
		}
		return documents;
	}

	private static byte[] sheet(Map<String, byte[]> sheets, String kind) {
		return sheets.entrySet()
			.stream()
			.filter((sheet) -> sheet.getKey().contains(kind))
			.map(Map.Entry::getValue)
			.findFirst()
			.orElseThrow();
	}

	/** What is read first, so that a difference is shown in words. */
	private static void assertSame(Map<String, byte[]> made, Map<String, byte[]> before) {
		assertThat(made.keySet()).containsExactlyInAnyOrderElementsOf(before.keySet());
		made.forEach((name, bytes) -> {
			assertThat(PrintedText.of(bytes)).as(name).isEqualTo(PrintedText.of(before.get(name)));
			assertThat(bytes).as(name).isEqualTo(before.get(name));
		});
	}

}
