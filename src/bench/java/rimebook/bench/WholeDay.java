package rimebook.bench;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

import org.jsoup.nodes.Element;
import org.springframework.context.ConfigurableApplicationContext;
import tools.jackson.databind.JsonNode;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.competition.JudgingMethod;
import rimebook.panels.SeatKind;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;

/**
 * A whole day over HTTP, as fast as it goes: teams in four events of both ways of judging,
 * each of two segments before nine judges; in points judging the technical panel calls and
 * authorises. Programmes are interrupted and skated again, teams withdrawn, one of them by
 * mistake, marks put right by two people, results posted, protested against, decided and
 * signed, while people follow. Each published standing is compared with what the pure
 * functions make of the cards that this program sent, and at the end every acknowledged card
 * with the database; any difference is printed and ends it with 1.
 *
 * <p>
 * Arguments: {@code h2}, {@code postgres} or {@code nodes}, which are two on PostgreSQL
 * behind nginx; then the numbers of teams (60), of followers (2000) and of minutes after
 * which nobody is called any more (10).
 */
public final class WholeDay {

	private static final int JUDGES = 9;

	private final Random random = new Random(20270213);

	private final List<DayEvent> events = new ArrayList<>();

	private final Queue<Long> closed = new ConcurrentLinkedQueue<>();

	/** When the closing began, by segment and version. */
	private final Map<String, Long> closes = new ConcurrentHashMap<>();

	private final Map<String, Integer> done = new TreeMap<>();

	private final Cluster service;

	/** When nobody is called any more. */
	private final long most;

	private long deadline;

	private DayDesk desk;

	private Followers followers;

	private int compared;

	private int differences;

	private volatile boolean failed;

	/** The newest standing of the segment that was skated last. */
	private volatile int newest;

	private WholeDay(Cluster service, int minutes) {
		this.service = service;
		this.most = TimeUnit.MINUTES.toNanos(minutes);
	}

	public static void main(String[] arguments) throws Exception {
		int teams = (arguments.length > 1) ? Integer.parseInt(arguments[1]) : 60;
		int followers = (arguments.length > 2) ? Integer.parseInt(arguments[2]) : 2000;
		int minutes = (arguments.length > 3) ? Integer.parseInt(arguments[3]) : 10;
		int differences = new WholeDay(Cluster.named((arguments.length > 0) ? arguments[0] : "h2", "whole-day"), minutes)
			.run(teams, followers);
		System.exit((differences > 0) ? 1 : 0);
	}

	private int run(int teams, int followers) throws Exception {
		prepare(teams / 4);
		try (this.service) {
			this.service.start();
			Loopback crowd = new Loopback(this.service.port());
			this.followers = new Followers(crowd, this.events.get(0).follow);
			this.followers.gather(followers);
			long began = System.nanoTime();
			this.deadline = began + this.most;
			Thread day = new Thread(this::play, "day");
			day.setDaemon(true);
			day.start();
			Loopback.stepBack();
			while (day.isAlive()) {
				crowd.runUntil(System.nanoTime() + 200_000_000L);
			}
			long took = (System.nanoTime() - began) / 1_000_000_000;
			crowd.runUntil(System.nanoTime() + 15_000_000_000L);
			this.service.stop();
			System.out.printf("%d teams in %d s, %d followers%n", teams, took, followers);
			report(followers, crowd.failures());
		}
		return this.differences;
	}

	private void prepare(int teams) {
		try (ConfigurableApplicationContext context = this.service.within()) {
			this.desk = new DayDesk(context, Role.SECRETARY, Role.REFEREE, Role.ACCOUNTANT, Role.TECHNICAL);
			List<DraftEvent> drafts = List.of(
					event("Senior", DraftEvent.Judging.byPoints(JUDGES, new DraftEvent.PointsChoice("synchronized-2025-26", "senior"))),
					event("Novice", DraftEvent.Judging.by(JudgingMethod.ONE_BY_ONE, JUDGES)),
					CompetitionFixtures.anEvent("Junior", JUDGES), CompetitionFixtures.anEvent("Adult", JUDGES));
			for (SmallCompetition made : SmallCompetition.running(context, teams, drafts)) {
				made.seatInstead(SeatKind.REFEREE, this.desk.name(Role.REFEREE));
				made.seatInstead(SeatKind.ACCOUNTANT, this.desk.name(Role.ACCOUNTANT));
				this.events.add(new DayEvent(context, made, this.random));
			}
		}
	}

	private static DraftEvent event(String name, DraftEvent.Judging judging) {
		return new DraftEvent(name, judging, List.of(CompetitionFixtures.aShort(), CompetitionFixtures.aFree()))
			.signedAtOnce();
	}

	/** The day, from the first draw to the last signature. */
	private void play() {
		try {
			this.desk.begin(this.service.port(), this.events);
			for (int segment = 0; segment < 2; segment++) {
				for (DayEvent event : this.events) {
					skate(event, segment);
					finish(event, segment);
				}
			}
			for (DayEvent event : this.events) {
				compare(event.name, event.data, event.sent.places());
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
		catch (Exception | AssertionError ex) {
			this.failed = true;
			System.out.println("The day ended early: " + ex);
		}
	}

	/** One segment, with what goes wrong in it. */
	private void skate(DayEvent event, int segment) throws Exception {
		String id = event.ids.get(segment);
		String stand = "/desk/stand/" + id;
		this.desk.act(Role.REFEREE, "/desk/draw/" + id, "form:has([name=seed])", Map.of("seed", "rime " + segment));
		this.desk.act(Role.REFEREE, stand, "form[action$=/open]", Map.of());
		this.followers.turnTo(id, event.page(segment));
		this.newest = 0;
		for (int number = 1; this.desk.isThere(stand, "form[action$=/call]"); number++) {
			if (System.nanoTime() > this.deadline) {
				throw new IllegalStateException("the time is over");
			}
			if (number == 2) {
				withdraw(event, segment, true);
			}
			this.desk.act(Role.REFEREE, stand, "form[action$=/call]", Map.of());
			if (number == 3 && !event.byPoints) {
				skateAgain(event, segment);
			}
			String team = this.desk.mark(event, segment);
			close(event, segment);
			if (number % 3 == 0) {
				correct(event, segment, team, "");
			}
			if (number == 3 && segment == 0) {
				withdraw(event, segment, false);
			}
		}
	}

	/** Four judges have sent when the music stops; the team begins anew. */
	private void skateAgain(DayEvent event, int segment) throws Exception {
		String stand = "/desk/stand/" + event.ids.get(segment);
		this.desk.act(Role.REFEREE, stand, "form[action$=/clock/start]", Map.of());
		this.desk.send(event, segment, 4);
		this.desk.act(Role.REFEREE, stand, "form[action$=/clock/interrupt]", Map.of("cause", "EQUIPMENT"));
		this.desk.act(Role.REFEREE, stand, "form[action$=/clock/reskate]", Map.of("marking", "RESKATED_ONLY"));
		count("programmes skated again");
	}

	/** The next team is withdrawn, and by mistake comes back. */
	private void withdraw(DayEvent event, int segment, boolean mistaken) throws Exception {
		String id = event.ids.get(segment);
		Visitor.Page stand = this.desk.open(Role.REFEREE, "/desk/stand/" + id);
		Element next = stand.document().selectFirst("form[action$=/end] [name=performance]");
		if (next == null) {
			return;
		}
		this.desk.act(Role.REFEREE, "/desk/stand/" + id, "form[action$=/end]", Map.of("how", "WITHDRAWN", "reason", "The manager said so."));
		count("withdrawals");
		if (mistaken) {
			this.desk.act(Role.ACCOUNTANT, "/desk/protests/" + id + "/corrections/new/status?performance=" + next.val(), "main form",
					Map.of("performance", next.val(), "status", "WAITING", "reason", "It was another team."));
			approve(id);
			count("withdrawals taken back");
		}
	}

	private void close(DayEvent event, int segment) throws Exception {
		long began = System.nanoTime();
		this.desk.act(Role.REFEREE, "/desk/stand/" + event.ids.get(segment), "form[action$=/close]", Map.of());
		this.closed.add(System.nanoTime() - began);
		this.newest = compare(event.title(segment), event.data(segment), event.sent.places(segment));
		this.closes.put(event.ids.get(segment) + " " + this.newest, began);
	}

	/** A mark is put right: the accountant proposes, the referee approves. */
	private void correct(DayEvent event, int segment, String team, String protest) throws Exception {
		String id = event.ids.get(segment);
		String path = "/desk/protests/" + id + "/corrections/new";
		int judge = this.random.nextInt(JUDGES);
		Visitor.Page page = this.desk.open(Role.ACCOUNTANT, path);
		Map<String, String> form = new HashMap<>(event.sent.correct(segment, team, judge));
		form.put("performance", page.document()
			.select("[name=performance] option")
			.stream()
			.filter((option) -> option.text().endsWith(team))
			.findFirst()
			.orElseThrow(() -> new AssertionError(team + " is not on " + path))
			.val());
		form.put("seat", page.document().select("[name=seat] option[value]:not([value=''])").get(judge).val());
		if (event.byPoints) {
			form.put("line", page.document().select("[name=line] option").eachAttr("value").stream().filter((line) -> line.endsWith("Composition")).findFirst().orElseThrow());
		}
		form.put("reason", "The judge typed something else than is on the sheet.");
		form.put("protest", protest);
		this.desk.act(Role.ACCOUNTANT, path, "main form", form);
		approve(id);
		count("marks put right");
		this.newest = compare(event.title(segment), event.data(segment), event.sent.places(segment));
	}

	private void approve(String segment) throws InterruptedException {
		String path = "/desk/protests/" + segment;
		List<String> proposed = this.desk.open(Role.REFEREE, path)
			.document()
			.select("a[id^=correction-]")
			.eachAttr("href");
		for (String correction : proposed) {
			if (this.desk.isThere(correction, "form[action$=/approval]")) {
				this.desk.act(Role.REFEREE, correction, "form[action$=/approval]", Map.of());
			}
		}
	}

	/** Post, hear two protests, of which one is upheld, post again and sign. */
	private void finish(DayEvent event, int segment) throws Exception {
		String results = "/desk/results/" + event.ids.get(segment);
		this.desk.act(Role.ACCOUNTANT, results, "form[action$=/posting]", Map.of());
		String leader = event.sent.places(segment).entrySet().stream().min(Map.Entry.comparingByValue()).orElseThrow().getKey();
		protest(event, segment, leader, false);
		correct(event, segment, leader, protest(event, segment, leader, true));
		if (this.desk.isThere(results, "form[action$=/posting]")) {
			this.desk.act(Role.ACCOUNTANT, results, "form[action$=/posting]", Map.of());
		}
		for (Role role : List.of(Role.REFEREE, Role.ACCOUNTANT)) {
			this.desk.act(role, results + "/signature?signatory=" + role, "form[action$=/signature]", Map.of("password", Crew.PASSWORD));
		}
		JsonNode signed = published(event.data(segment), (standing) -> standing.path("state").asString("").equalsIgnoreCase("official"));
		expect(signed.path("state").asString("").equalsIgnoreCase("official"), event.title(segment) + " is not official");
		count("results signed");
	}

	/** The secretary takes a protest, the referee decides; returns its identity. */
	private String protest(DayEvent event, int segment, String team, boolean upheld) throws InterruptedException {
		String path = "/desk/protests/" + event.ids.get(segment);
		Element entry = this.desk.open(Role.SECRETARY, path + "/new")
			.document()
			.select("[name=entry] option")
			.stream()
			.filter((option) -> option.text().endsWith(team))
			.findFirst()
			.orElseThrow(() -> new AssertionError(team + " cannot protest"));
		this.desk.act(Role.SECRETARY, path + "/new", "main form", Map.of("entry", entry.val(), "category", "CALCULATION", "text",
				"A mark was keyed in wrongly.", "filedBy", "Mira Sund"));
		for (String protest : this.desk.open(Role.REFEREE, path).document().select("a[id^=protest-]").eachAttr("href")) {
			if (this.desk.isThere(protest, "form:has([name=upheld])")) {
				this.desk.act(Role.REFEREE, protest, "form:has([name=upheld])",
						Map.of("upheld", String.valueOf(upheld), "grounds", "The sheet was looked at."));
				count(upheld ? "protests upheld" : "protests denied");
				return protest.substring(protest.lastIndexOf('/') + 1);
			}
		}
		throw new AssertionError("No protest waits at " + path);
	}

	private void count(String what) {
		this.done.merge(what, 1, Integer::sum);
	}

	/**
	 * Compare what is published with what it should be.
	 * @return the number of the version that was published
	 */
	private int compare(String what, String path, Map<String, Integer> expected) throws InterruptedException {
		JsonNode standing = published(path, (newest) -> places(newest).equals(expected));
		this.compared += expected.size();
		int version = standing.path("version").asInt(0);
		expect(places(standing).equals(expected), what + ", version " + version + ": published " + new TreeMap<>(places(standing))
				+ " instead of " + new TreeMap<>(expected));
		return version;
	}

	private static Map<String, Integer> places(JsonNode standing) {
		Map<String, Integer> places = new HashMap<>();
		standing.path("rows").forEach((row) -> {
			if (!row.get("place").isNull()) {
				places.put(row.get("team").asString(), row.get("place").asInt());
			}
		});
		return places;
	}

	/**
	 * Look at a standing until it is as wanted, for five seconds at most: a proxy may keep the
	 * one before for a second, and the other node has to hear of the new one.
	 */
	private JsonNode published(String path, Predicate<JsonNode> wanted) throws InterruptedException {
		JsonNode standing = DayDesk.read(this.desk.send("GET", path, "", "")).path("standing");
		for (int look = 0; look < 25 && !wanted.test(standing); look++) {
			TimeUnit.MILLISECONDS.sleep(200);
			standing = DayDesk.read(this.desk.send("GET", path, "", "")).path("standing");
		}
		return standing;
	}

	private void expect(boolean holds, String otherwise) {
		if (!holds) {
			this.differences++;
			System.out.println(otherwise);
		}
	}

	private void report(int followers, int broken) throws SQLException {
		System.out.println("  " + this.done);
		Times.print("card to acknowledged", this.desk.cards());
		Times.print("close to answered", this.closed);
		Times.print("close to screen, stream", this.followers.delays(true, this.closes));
		Times.print("close to screen, polling", this.followers.delays(false, this.closes));
		System.out.printf("  followers kept: %d of %d have the last standing; %d connections broke%n",
				this.followers.having(this.newest), followers, broken);
		System.out.printf("  turned away: %d requests of followers, %d of the crew%n", this.followers.refused(), this.desk.turnedAway());
		Map<String, String> present = present();
		this.desk.acknowledged().forEach((id, kept) -> expect(kept.equals(present.get(id)), "Card " + id + ": " + present.get(id) + " instead of " + kept));
		expect(present.size() == this.desk.acknowledged().size(), present.size() + " cards of judges are there, "
				+ this.desk.acknowledged().size() + " were acknowledged");
		expect(!this.failed, "The day was not played to its end");
		System.out.printf("  %d cards acknowledged, %d in the database; %d places compared; %d differences%n",
				this.desk.acknowledged().size(), present.size(), this.compared, this.differences);
	}

	/** What judges sent, as the database has it. */
	private Map<String, String> present() throws SQLException {
		Map<String, String> present = new HashMap<>();
		try (Connection connection = this.service.connect(); Statement statement = connection.createStatement()) {
			try (ResultSet rows = statement
				.executeQuery("select id, performance_id, sequence, first_mark, second_mark from card_submission where origin = 'JUDGE'")) {
				while (rows.next()) {
					present.put(rows.getString(1), rows.getString(2) + " " + rows.getInt(3) + " " + rows.getInt(4) + " " + rows.getInt(5));
				}
			}
			try (ResultSet rows = statement
				.executeQuery("select id, performance_id, sequence, marks from points_card where origin = 'JUDGE'")) {
				while (rows.next()) {
					JsonNode marks = DayDesk.read(rows.getString(4));
					present.put(rows.getString(1), rows.getString(2) + " " + rows.getInt(3) + " "
							+ SentPoints.marks(marks.get("grades")) + " " + SentPoints.marks(marks.get("components")));
				}
			}
		}
		return present;
	}

}
