package rimebook.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.Locale;

import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

import rimebook.RimebookApplication;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.competition.JudgingMethod;
import rimebook.documents.DocumentKind;
import rimebook.documents.DocumentRef;
import rimebook.documents.Documents;
import rimebook.documents.PaperSize;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.points.CalledListView;
import rimebook.points.ElementCalls;
import rimebook.points.ListAuthorisations;
import rimebook.points.PointsJudge;
import rimebook.testsupport.CalledElements;
import rimebook.testsupport.SmallCompetition;

/**
 * How long each document of a large event takes, 60 teams and nine judges, judged by
 * majority and by points: the first one of the service, and each again. Ends with status
 * 1 if what every judge gave takes more than five seconds, the first time or later.
 *
 * <p>
 * Arguments: the number of teams (60).
 */
public final class DocumentTimes {

	private static final int JUDGES = 9;

	private static final long LONGEST = 5_000;

	/** On a machine that does other things, too, the time of the clock says little. */
	private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

	private static final int PROGRAMME = 9;

	private DocumentTimes() {
	}

	public static void main(String[] args) {
		int teams = (args.length > 0 && args[0].matches("\\d+")) ? Integer.parseInt(args[0]) : 60;
		try (ConfigurableApplicationContext running = new SpringApplicationBuilder(RimebookApplication.class)
			.run("--server.port=0", "--spring.datasource.url=jdbc:h2:mem:document-times;DB_CLOSE_DELAY=-1")) {
			SmallCompetition points = points(running, teams);
			SmallCompetition majority = majority(running, teams);
			Documents documents = running.getBean(Documents.class);
			long slowest = Math.max(time(documents, points), time(documents, majority));
			System.out.println("what each judge gave, the slowest: " + slowest + " ms");
			if (slowest > LONGEST) {
				System.exit(1);
			}
		}
	}

	private static SmallCompetition majority(ConfigurableApplicationContext running, int teams) {
		SmallCompetition competition = SmallCompetition.running(running, teams, new DraftEvent("Junior",
				DraftEvent.Judging.by(JudgingMethod.MAJORITY, JUDGES), List.of(CompetitionFixtures.aFree())));
		competition.open(1);
		competition.skateRest(1);
		return competition;
	}

	private static SmallCompetition points(ConfigurableApplicationContext running, int teams) {
		SmallCompetition competition = SmallCompetition.running(running, teams,
				CompetitionFixtures.aPointsEvent("Senior", JUDGES));
		competition.open(1);
		for (int team = 0; team < teams; team++) {
			judge(running, competition, team);
		}
		return competition;
	}

	private static void judge(ConfigurableApplicationContext running, SmallCompetition competition, int team) {
		PerformanceView performance = competition.callNext(1);
		new CalledElements(running, performance).call("I4+pi3", "ME4", "TwE3", "AC2", "AL2", "GL4", "I3+pi3", "GL3<",
				"ABB");
		CalledListView list = running.getBean(ElementCalls.class).ofPerformance(performance.id()).orElseThrow();
		for (SeatView seat : competition.seats()) {
			PointsJudge.send(running, performance, seat, list, (seat.number() * PROGRAMME + team) % 11 - 5);
		}
		running.getBean(ListAuthorisations.class)
			.authorise(performance.id(), list.sequence(), SmallCompetition.ACCOUNTANT);
		competition.close(performance);
	}

	/** The slowest time of what every judge gave, which is printed first. */
	private static long time(Documents documents, SmallCompetition competition) {
		DocumentRef detail = documents.offered(competition.event())
			.stream()
			.filter((ref) -> ref.kind() == DocumentKind.JUDGES_DETAIL)
			.findFirst()
			.orElseThrow();
		long slowest = time(documents, competition, detail);
		for (DocumentRef ref : documents.offered(competition.event())) {
			long took = time(documents, competition, ref);
			slowest = (ref.kind() == DocumentKind.JUDGES_DETAIL) ? Math.max(slowest, took) : slowest;
		}
		return slowest;
	}

	private static long time(Documents documents, SmallCompetition competition, DocumentRef ref) {
		long begun = System.nanoTime();
		long computed = THREADS.getCurrentThreadCpuTime();
		int bytes = documents.print(ref, PaperSize.A4, Locale.ENGLISH).bytes().length;
		long took = (System.nanoTime() - begun) / 1_000_000;
		System.out
			.println(competition.event().name() + ", " + ref.kind().word() + ": " + took + " ms, of which computing "
					+ (THREADS.getCurrentThreadCpuTime() - computed) / 1_000_000 + " ms, " + bytes + " bytes");
		return took;
	}

}
