package rimebook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;

import org.awaitility.Awaitility;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.RimebookApplication;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.competition.JudgingMethod;
import rimebook.tabulation.SegmentKind;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;

/**
 * How long a laptop needs from the command to its first answer, with the database of 60
 * teams, three segments and nine judges: on the disk of its own, and from a copy at a
 * second place. The start of the Java machine is counted.
 *
 * <p>
 * Argument: the number of teams (60).
 */
public final class NextLaptop {

	private static final int JUDGES = 9;

	private static final int SEGMENTS = 3;

	private NextLaptop() {
	}

	public static void main(String[] arguments) throws Exception {
		int teams = (arguments.length > 0) ? Integer.parseInt(arguments[0]) : 60;
		Path folder = Files.createTempDirectory("rimebook-next-laptop");
		Path stick = Files.createDirectory(folder.resolve("stick"));
		Path log = folder.resolve("service.log");
		skate(database(folder.resolve("first")), teams);
		System.out.printf("database: %,d bytes%n", Files.size(folder.resolve("first/rimebook.mv.db")));
		try (ServiceProcess first = new ServiceProcess(
				List.of(database(folder.resolve("first")), "rimebook.copy.folder=" + stick), log)) {
			time("the first laptop answers", first);
			long begun = System.nanoTime();
			Awaitility.await("a copy").atMost(Duration.ofMinutes(2)).until(() -> !files(stick, ".txt").isEmpty());
			System.out.printf("its first copy is whole at most %d ms later%n",
					Duration.ofNanos(System.nanoTime() - begun).toMillis());
			first.kill();
		}
		System.out.printf("copy: %,d bytes%n", Files.size(files(stick, ".zip").get(0)));
		try (ServiceProcess next = new ServiceProcess(
				List.of(database(folder.resolve("second")), "from-copy=" + stick, "rimebook.copy.folder=" + stick), log)) {
			time("the next laptop answers", next);
			next.kill();
		}
		Files.readAllLines(log).stream().filter((line) -> line.contains("FromCopy")).forEach(System.out::println);
		System.exit(0);
	}

	private static void time(String what, ServiceProcess service) throws IOException, InterruptedException {
		long begun = System.nanoTime();
		service.start();
		System.out.printf("%s after %d ms%n", what, Duration.ofNanos(System.nanoTime() - begun).toMillis());
	}

	private static List<Path> files(Path stick, String ending) throws IOException {
		try (Stream<Path> files = Files.list(stick)) {
			return files.filter((file) -> file.toString().endsWith(ending)).sorted().toList();
		}
	}

	private static String database(Path folder) {
		return "spring.datasource.url=jdbc:h2:file:" + folder.resolve("rimebook")
				+ ";WRITE_DELAY=0;LOCK_TIMEOUT=10000;DB_CLOSE_ON_EXIT=FALSE";
	}

	private static void skate(String database, int teams) {
		try (ConfigurableApplicationContext running = new SpringApplicationBuilder(RimebookApplication.class)
			.run("--server.port=0", "--" + database)) {
			DraftEvent event = new DraftEvent("Senior", DraftEvent.Judging.by(JudgingMethod.MAJORITY, JUDGES),
					List.of(CompetitionFixtures.aShort(), CompetitionFixtures.aFree(),
							new DraftEvent.DraftSegment("Second free skating", SegmentKind.FREE, 100, 240, 10)))
				.signedAtOnce();
			SmallCompetition competition = SmallCompetition.running(running, teams, event);
			for (int segment = 1; segment <= SEGMENTS; segment++) {
				competition.open(segment);
				competition.skateRest(segment);
			}
		}
	}

}
