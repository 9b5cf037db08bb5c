package rimebook.rehearsal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Stream;

import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;

import rimebook.accounts.Role;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** A whole small competition, rehearsed by a process of its own and deleted. */
@WholeApplication
class RehearsalIntegrationTests {

	private static final String PAGE = "/desk/rehearsal";

	/** What a visit of the real service's pages changes, rehearsal or not. */
	private static final Set<String> OF_VISITS = Set.of("spring_session", "spring_session_attributes", "form_answer");

	/** What follows from the lines of the record. */
	private static final Set<String> OF_THE_RECORD = Set.of("record_head", "record_anchor");

	private static final Duration PATIENCE = Duration.ofMinutes(4);

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JdbcTemplate database;

	@Test
	void theRealServiceIsAsBeforeAndNothingIsLeft() throws IOException {
		SmallCompetition competition = competition(this.context);
		competition.open(1);
		competition.skateNext(1);
		String name = Crew.add(this.context, Role.REFEREE);
		Visitor referee = Crew.signIn(this.context, name);
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		secretary.open(PAGE);
		Visitor.Page choice = referee.open(PAGE);
		String form = "form:has(input[value=" + competition.competition().id() + "])";
		Map<String, Set<String>> before = rows();

		Visitor.Page refused = choice.submit(form, Map.of("anyway", "false"));
		assertThat(refused.text()).contains("A real segment is open.", "Say that you want the rehearsal all the same");
		assertThat(rows()).isEqualTo(before);

		choice.submit(form, Map.of("anyway", "true"));
		Visitor.Page runs = await(referee, "it runs");
		assertThat(secretary.open(PAGE).text()).contains("it runs", "who began it")
			.doesNotContain(runs.document().select(".code").text());
		List<RehearsalFolder> folders = foldersOf(competition.competition().id().value());
		assertThat(folders).hasSize(1);
		String password = runs.document().select(".code").text();
		signInThere(referee, runs, name, password);
		markAll(referee, there(runs));
		assertThat(referee.open("/desk").path()).as("still signed in at the real service").isEqualTo("/desk");

		finish(referee, runs);
		assertThat(folders.get(0).path()).doesNotExist();
		assertThat(foldersOf(competition.competition().id().value())).isEmpty();
		expectOnlyTwoLines(before, rows());
	}

	/** It has an open segment, and its last one is a free skating. */
	SmallCompetition competition(ApplicationContext context) {
		return SmallCompetition.running(context, 3, 3);
	}

	/** The page says an address of this machine in its network, where it has one. */
	private static String there(Visitor.Page runs) {
		return runs.document().select(".facts a").attr("href").replaceAll("//[^:/]+", "//localhost");
	}

	/** With the same browser: ports of one host share its cookies. */
	private static void signInThere(Visitor referee, Visitor.Page runs, String name, String password) {
		Visitor.Page door = referee.open(there(runs));
		assertThat(door.path()).isEqualTo("/sign-in");
		String form = "form[action=/sign-in]";
		assertThat(door.submit(form, Map.of("signInName", name, "password", Crew.PASSWORD)).path())
			.as("the password of the real service")
			.startsWith("/sign-in");
		assertThat(referee.open(there(runs)).submit(form, Map.of("signInName", name, "password", password)).path())
			.isEqualTo(PAGE);
	}

	/** Go through both segments with a panel that is in no hurry to be watched. */
	private static void markAll(Visitor referee, String there) {
		Visitor.Page panel = referee.open(there);
		assertThat(panel.text()).contains("Rehearsal Nothing here counts", "Nothing: everything is done by hand");
		panel.submit("form.sheet", Map.of("mode", "EVERYTHING", "pace", "0"));
		Awaitility.await()
			.atMost(PATIENCE)
			.pollInterval(Duration.ofSeconds(1))
			.until(() -> referee.open(there).text().contains("Free skating all teams have skated"));
	}

	/** However it ends, it ends whole; here by the button. */
	void finish(Visitor referee, Visitor.Page runs) {
		runs.press("form[action=/desk/rehearsal/end]");
		await(referee, "stopped, and everything of it deleted");
	}

	/** The process of the rehearsal. */
	static ProcessHandle process() {
		return ProcessHandle.current()
			.children()
			.filter((child) -> child.info().command().orElse("").endsWith("java"))
			.findFirst()
			.orElseThrow();
	}

	/** Until the page says so, or that it is over. */
	static Visitor.Page await(Visitor visitor, String words) {
		Visitor.Page page = Awaitility.await()
			.atMost(PATIENCE)
			.pollInterval(Duration.ofMillis(500))
			.until(() -> visitor.open(PAGE),
					(shown) -> shown.text().contains(words) || shown.text().contains("it is over"));
		assertThat(page.text()).contains(words);
		return page;
	}

	private static void expectOnlyTwoLines(Map<String, Set<String>> before, Map<String, Set<String>> after) {
		for (Map.Entry<String, Set<String>> table : after.entrySet()) {
			Set<String> came = new TreeSet<>(table.getValue());
			came.removeAll(before.get(table.getKey()));
			assertThat(table.getValue()).as(table.getKey()).containsAll(before.get(table.getKey()));
			if (table.getKey().equals("record_line")) {
				assertThat(came).filteredOn((line) -> line.contains("competition.rehearsal-begun")).hasSize(1);
				assertThat(came).filteredOn((line) -> line.contains("competition.rehearsal-ended")).hasSize(1);
			}
			assertThat(came).as(table.getKey()).hasSize(table.getKey().equals("record_line") ? 2 : 0);
		}
	}

	/** Every row of every table, as text. */
	private Map<String, Set<String>> rows() {
		Map<String, Set<String>> all = new TreeMap<>();
		for (String table : tables()) {
			Set<String> rows = new TreeSet<>();
			this.database.query("select * from " + table, (row) -> {
				StringBuilder text = new StringBuilder();
				for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
					text.append(row.getString(i)).append('|');
				}
				rows.add(text.toString());
			});
			all.put(table, rows);
		}
		return all;
	}

	private List<String> tables() {
		return this.database
			.queryForList("select lower(table_name) from information_schema.tables "
					+ "where lower(table_schema) = 'public' and table_type = 'BASE TABLE'", String.class)
			.stream()
			.filter((table) -> !OF_VISITS.contains(table) && !OF_THE_RECORD.contains(table)
					&& !table.startsWith("flyway"))
			.toList();
	}

	/** Other services of this machine may have theirs. */
	private static List<RehearsalFolder> foldersOf(UUID competition) throws IOException {
		try (Stream<Path> all = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
			return all.filter((file) -> file.getFileName().toString().startsWith("rimebook-rehearsal"))
				.map(RehearsalFolder::new)
				.filter((folder) -> folder.competition().filter(competition::equals).isPresent())
				.toList();
		}
	}

}
