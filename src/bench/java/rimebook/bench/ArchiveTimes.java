package rimebook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import javax.sql.DataSource;

import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.RimebookApplication;
import rimebook.archive.ArchiveWriting;
import rimebook.archive.ArchivedDocument;
import rimebook.archive.ArchivedDocuments;
import rimebook.archive.Variant;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.competition.DraftEvent;
import rimebook.competition.JudgingMethod;
import rimebook.tabulation.SegmentKind;
import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.SmallCompetition;

/**
 * How long the three commands, and the button with its documents, take for one large
 * event: 60 teams, three segments, nine judges, every card sent and closed one by one. The
 * commands are processes of their own, and their start is counted.
 *
 * <p>
 * Arguments: {@code h2} or {@code postgres}, then the number of teams (60).
 */
public final class ArchiveTimes {

	private static final int JUDGES = 9;

	private static final int SEGMENTS = 3;

	private ArchiveTimes() {
	}

	public static void main(String[] args) throws Exception {
		boolean postgres = args.length > 0 && args[0].equals("postgres");
		int teams = (args.length > 1) ? Integer.parseInt(args[1]) : 60;
		Path folder = Files.createTempDirectory("rimebook-archive-times");
		List<String> from = database(postgres, folder.resolve("skated"));
		String slug = skate(from, teams, folder);
		Path file = folder.resolve("archive.zip");
		List<String> to = database(postgres, folder.resolve("restored"));
		time("archive --without-documents",
				with(from, "archive", slug, folder.resolve("bare.zip").toString(), "--without-documents"));
		time("archive", with(from, "archive", slug, file.toString()));
		System.out.println("  bytes of the file: " + Files.size(file));
		time("verify-archive", List.of("verify-archive", file.toString()));
		time("restore", with(to, "restore", file.toString()));
		time("verify-record", with(to, "verify-record"));
		Path again = folder.resolve("again.zip");
		time("archive again", with(to, "archive", slug, again.toString()));
		System.out.println("  bytes of the file: " + Files.size(again));
	}

	private static List<String> database(boolean postgres, Path file) {
		if (postgres) {
			PostgresDatabase made = PostgresDatabase.create();
			return List.of(made.url(), made.username(), made.password());
		}
		return List.of("jdbc:h2:file:" + file + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE", "rimebook", "");
	}

	private static String skate(List<String> database, int teams, Path folder) throws IOException, SQLException {
		try (ConfigurableApplicationContext running = new SpringApplicationBuilder(RimebookApplication.class)
			.run("--server.port=0", "--spring.datasource.url=" + database.get(0),
					"--spring.datasource.username=" + database.get(1),
					"--spring.datasource.password=" + database.get(2))) {
			DraftEvent event = new DraftEvent("Senior", DraftEvent.Judging.by(JudgingMethod.MAJORITY, JUDGES),
					List.of(CompetitionFixtures.aShort(), CompetitionFixtures.aFree(),
							new DraftEvent.DraftSegment("Second free skating", SegmentKind.FREE, 100, 240, 10)))
				.signedAtOnce();
			SmallCompetition competition = SmallCompetition.running(running, teams, event);
			for (int segment = 1; segment <= SEGMENTS; segment++) {
				competition.open(segment);
				competition.skateRest(segment);
			}
			for (Variant variant : Variant.values()) {
				withDocuments(running, competition.competition().id(), variant, folder.resolve(variant + ".zip"));
			}
			return competition.competition().slug();
		}
	}

	/** As the button makes it, in the service, with what is printed. */
	private static void withDocuments(ConfigurableApplicationContext running, CompetitionId competition,
			Variant variant, Path file) throws IOException, SQLException {
		long begun = System.nanoTime();
		List<ArchivedDocument> documents = running.getBeanProvider(ArchivedDocuments.class)
			.orderedStream()
			.flatMap((all) -> all.of(competition, variant).stream())
			.toList();
		try (Connection connection = running.getBean(DataSource.class).getConnection()) {
			ArchiveWriting.write(connection,
					new ArchiveWriting.Order(competition.toString(), variant, Instant.now(), documents), file,
					ArchiveWriting.Progress.UNSEEN);
		}
		System.out.println("with documents, " + variant + ": " + Duration.ofNanos(System.nanoTime() - begun).toMillis()
				+ " ms, " + documents.size() + " documents, " + Files.size(file) + " bytes");
	}

	private static List<String> with(List<String> database, String... command) {
		List<String> all = new ArrayList<>(List.of(command));
		all.addAll(List.of("--url", database.get(0), "--user", database.get(1), "--password=" + database.get(2)));
		return all;
	}

	private static void time(String name, List<String> arguments) throws IOException, InterruptedException {
		List<String> command = new ArrayList<>(
				List.of("java", "-cp", System.getProperty("java.class.path"), RimebookApplication.class.getName()));
		command.addAll(arguments);
		long begun = System.nanoTime();
		int status = new ProcessBuilder(command).inheritIO().start().waitFor();
		System.out.println(name + ": " + Duration.ofNanos(System.nanoTime() - begun).toMillis() + " ms, status " + status);
	}

}
