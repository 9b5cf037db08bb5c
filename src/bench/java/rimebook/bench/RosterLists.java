package rimebook.bench;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.springframework.context.ConfigurableApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.entries.PlannedElements;
import rimebook.entries.RequiredElements;
import rimebook.rosters.RosterImport;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PostgresDatabase;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;

/**
 * How long the lists of a large event take before anybody skates: 60 teams of 20 people with an
 * international set of eligibility rules and planned elements, of whom every third team
 * lacks somebody and every second plans otherwise than asked. Each page is fetched over HTTP by one secretary, whole. Ends with status 1 if one of a
 * hundred of what is missing takes longer than 300 ms once the service is warm.
 *
 * <p>
 * Arguments: {@code h2} or {@code postgres}; then how often each page is fetched (200).
 */
public final class RosterLists {

	private static final int TEAMS = 60;

	private static final int PEOPLE = 20;

	/** As many as may be on the ice; the rest stand by. */
	private static final int ON_ICE = 16;

	private static final long LONGEST = TimeUnit.MILLISECONDS.toNanos(300);

	private RosterLists() {
	}

	public static void main(String[] arguments) throws Exception {
		boolean postgres = arguments.length > 0 && arguments[0].equals("postgres");
		int times = (arguments.length > 1) ? Integer.parseInt(arguments[1]) : 200;
		boolean met;
		try (ServiceProcess service = new ServiceProcess(
				postgres ? PostgresDatabase.create().asProperties() : ServiceProcess.onH2(),
				Path.of("target", "roster-lists.log"), "-Xmx512m")) {
			met = run(service, times);
		}
		System.exit(met ? 0 : 1);
	}

	private static boolean run(ServiceProcess service, int times) throws Exception {
		String name;
		String competition;
		String event;
		try (ConfigurableApplicationContext context = service.within()) {
			SmallCompetition small = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, context, TEAMS,
					CompetitionFixtures.anEvent("Junior", 9));
			competition = small.competition().id().toString();
			event = small.event().id().toString();
			name = Crew.add(context, Role.SECRETARY);
			plan(context, small);
			long begun = System.nanoTime();
			context.getBean(RosterImport.class)
				.apply(small.competition().id(), rosters(), new RosterImport.Answers(Set.of(), Set.of()), (done) -> {
				}, SmallCompetition.SECRETARY);
			System.out.printf("rosters written in %d ms%n", TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun));
		}
		service.start();
		Visitor secretary = Visitor.signedIn(service.port(), name, Crew.PASSWORD);
		secretary.open("/desk/rosters/eligibility/" + event + "?set=international-junior")
			.submit("form.sheet", Map.of("cutOff", "2026-06-30"));
		secretary.open("/desk/fees/" + competition + "/rules")
			.submit("form.sheet", Map.of("currency", "EUR", "perTeam", "220", "perSkater", "6.50"));
		boolean met = true;
		for (String page : List.of("/desk/rosters/", "/desk/arrival/", "/desk/managers/")) {
			met &= measure(secretary, page + competition, times);
		}
		return met & measure(secretary, "/desk/letters/" + competition + "/to/MISSING", times);
	}

	/** Every second team plans otherwise than asked. */
	private static void plan(ConfigurableApplicationContext context, SmallCompetition small) {
		context.getBean(RequiredElements.class)
			.set(new RequiredElements.SetRequired(small.segment(1), "", "C 1\nL 1-2\nB/W 1", 3, 4, -1),
					SmallCompetition.SECRETARY);
		PlannedElements plans = context.getBean(PlannedElements.class);
		for (int i = 0; i < TEAMS; i++) {
			plans.plan(new PlannedElements.PlanElements(small.entries().get(i).id(), small.segment(1),
					(i % 2 == 0) ? "C1 L2 B1" : "C1 C2", -1), SmallCompetition.SECRETARY);
		}
	}

	/** Not what the first ones take: a service that was just started compiles itself. */
	private static boolean measure(Visitor secretary, String page, int times) {
		fetch(secretary, page, times / 2);
		List<Long> took = fetch(secretary, page, times);
		Times.print(page.replaceAll("/[0-9a-f-]{36}", ""), took);
		return !page.startsWith("/desk/rosters") || took.stream().sorted().toList().get(took.size() * 99 / 100) < LONGEST;
	}

	private static List<Long> fetch(Visitor secretary, String page, int times) {
		List<Long> took = new ArrayList<>();
		for (int i = 0; i < times; i++) {
			long begun = System.nanoTime();
			byte[] body = secretary.bytes(page).body();
			took.add(System.nanoTime() - begun);
			if (!new String(body, StandardCharsets.UTF_8).contains("Team " + TEAMS)) {
				throw new IllegalStateException(page + " has not every team");
			}
		}
		return took;
	}

	private static String rosters() {
		return "event,team,given_name,family_name,birth_date,membership_number,part\n"
				+ IntStream.rangeClosed(1, TEAMS)
					.boxed()
					.flatMap((team) -> IntStream.rangeClosed((team % 3 == 0) ? 2 : 1, PEOPLE)
						.mapToObj((number) -> person(team, number)))
					.collect(Collectors.joining());
	}

	/** One in fifty is too old. */
	private static String person(int team, int number) {
		return "Junior,Team %d,%s,Firn%s,%d-03-09,M%d-%d,%s%n".formatted(team, letters(number), letters(team),
				((team + number) % 50 == 0) ? 2004 : 2010, team, number, (number > ON_ICE) ? "alternate" : "skates");
	}

	private static String letters(int number) {
		return "" + (char) ('A' + number / 26) + (char) ('a' + number % 26);
	}

}
