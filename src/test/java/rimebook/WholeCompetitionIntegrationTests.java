package rimebook;

import java.math.BigDecimal;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.Combination;
import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.Hundredths;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentKind;
import rimebook.testsupport.Crew;
import rimebook.testsupport.StoredFindings;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A small competition from its first form to its second signature, over HTTP only: people
 * fill in pages, tablets send JSON. Every published place is compared with what the pure
 * function makes of the cards that were sent.
 */
@WholeApplication
class WholeCompetitionIntegrationTests {

	private static final int TEAMS = 6;

	private static final int JUDGES = 3;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private RecordVerification record;

	@LocalServerPort
	private int port;

	private final Random random = new Random(6);

	private final JsonMapper json = JsonMapper.shared();

	private final Map<String, List<CardMarks>> sent = new HashMap<>();

	private BeforeTheIce before;

	private StoredFindings stored;

	@BeforeEach
	void remember() {
		this.stored = StoredFindings.since(this.record);
	}

	@Test
	void everyPublishedPlaceIsThatOfThePureFunction() {
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		String refereeName = Crew.add(this.context, Role.REFEREE);
		String accountantName = Crew.add(this.context, Role.ACCOUNTANT);
		Visitor referee = Crew.signIn(this.context, refereeName);
		Visitor accountant = Crew.signIn(this.context, accountantName);
		String name = "Frostmoor Cup " + UUID.randomUUID();
		Visitor.Page event = enter(secretary, name);
		String eventId = lastOf(event.path());
		seat(referee, eventId, Crew.displayName(refereeName), Crew.displayName(accountantName));
		List<String> tablets = pair(referee, eventId);
		this.before.letIn(TEAMS);
		Map<String, Integer> first = skate(referee, tablets, segment(event, 0), SegmentKind.SHORT);
		finish(segment(event, 0), referee, accountant);
		Map<String, Integer> second = skate(referee, tablets, segment(event, 1), SegmentKind.FREE);
		finish(segment(event, 1), referee, accountant);
		compareEvent(first, second);
		this.before.look();
		assertThat(this.record.verify().isWhole()).isTrue();
		assertThat(this.stored.found()).isEmpty();
	}

	private Visitor.Page enter(Visitor secretary, String name) {
		Visitor.Page competition = secretary.open("/desk/competitions/new")
			.submit("main form", Map.of("name", name, "place", "Skerrywick", "zone", "Europe/Helsinki", "firstDay",
					"2027-02-13", "lastDay", "2027-02-14", "rulebook", "Rulebook 2026/27"));
		Visitor.Page event = secretary.open(competition.path() + "/events/new")
			.submit("main form", Map.of("name", "Junior", "judges", String.valueOf(JUDGES), "first.length", "2:40",
					"second.length", "4:00", "signatureWaits", "false"));
		assertThat(event.status()).as(event.text()).isEqualTo(200);
		move(secretary, competition.path(), "ENTRIES_OPEN");
		for (int team = 1; team <= TEAMS; team++) {
			Visitor.Page entered = secretary.open("/desk/entries/" + lastOf(event.path()))
				.submit("form[action^=/desk/entries/]:has([name=team])",
						Map.of("team", "Team " + team, "club", "Club " + team + name, "town", "Town"));
			assertThat(entered.text()).contains("Team " + team);
		}
		this.before = new BeforeTheIce(secretary, lastOf(competition.path()), lastOf(event.path()),
				"Firn" + UUID.randomUUID().toString().replaceAll("[^a-f]", ""));
		this.before.prepare(TEAMS);
		move(secretary, competition.path(), "ENTRIES_CLOSED");
		move(secretary, competition.path(), "RUNNING");
		return secretary.open(event.path());
	}

	private static void move(Visitor secretary, String competition, String state) {
		Visitor.Page moved = secretary.open(competition + "/state?next=" + state).press("form[action$=/state]");
		assertThat(moved.status()).as(moved.text()).isEqualTo(200);
	}

	private static String segment(Visitor.Page event, int index) {
		return event.document()
			.select("a[href^=/desk/stand/], a[href^=/desk/draw/], a[href^=/desk/results/]")
			.eachAttr("href")
			.stream()
			.map(WholeCompetitionIntegrationTests::lastOf)
			.distinct()
			.skip(index)
			.findFirst()
			.orElseThrow(() -> new AssertionError("No road on " + event.path() + ": " + event.text()));
	}

	private void seat(Visitor referee, String event, String refereeName, String accountantName) {
		List<String> places = new ArrayList<>(List.of("referee-1", "accountant-1"));
		for (int judge = 1; judge <= JUDGES; judge++) {
			places.add("judge-" + judge);
		}
		Map<String, String> officials = new HashMap<>();
		places.forEach((place) -> officials.put(place, "Official " + UUID.randomUUID()));
		officials.put("referee-1", refereeName);
		officials.put("accountant-1", accountantName);
		Visitor.Page added = referee.open("/desk/officials/import")
			.submit("main form", Map.of("csv", "name\n" + String.join("\n", officials.values())))
			.press("main form");
		assertThat(added.text()).contains("Officials added to the register: " + places.size());
		Visitor.Page panel = referee.open("/desk/panel/" + event);
		Map<String, String> chosen = new HashMap<>();
		officials.forEach((place, name) -> chosen.put("official[" + place + "]",
				panel.document().select("select option:contains(" + name + ")").val()));
		assertThat(panel.submit("#seating", chosen).text()).contains(officials.values());
	}

	private List<String> pair(Visitor referee, String event) {
		referee.open("/desk/panel/" + event).press("form[action$=/codes]");
		Visitor.Page slips = referee.open("/desk/panel/" + event + "/slips");
		List<String> tokens = new ArrayList<>();
		for (String code : slips.document().select(".slip-code").eachText()) {
			HttpResponse<String> paired = new Visitor(this.port).json("POST", "/api/seat-pairings",
					"{\"code\":\"" + code.replaceAll("[^A-Z0-9]", "") + "\"}");
			assertThat(paired.statusCode()).as(paired.body()).isBetween(200, 201);
			tokens.add(this.json.readTree(paired.body()).get("token").asString());
		}
		assertThat(tokens).hasSize(JUDGES);
		return tokens;
	}

	/**
	 * Draw, open, and let every team skate; after each the public standing is checked.
	 */
	private Map<String, Integer> skate(Visitor referee, List<String> tablets, String segment, SegmentKind kind) {
		referee.open("/desk/draw/" + segment).submit("form:has([name=seed])", Map.of("seed", "frost " + kind));
		referee.open("/desk/stand/" + segment).press("form[action$=/open]");
		List<EntryCards> skated = new ArrayList<>();
		Map<String, Integer> places = Map.of();
		for (int number = 1; number <= TEAMS; number++) {
			Visitor.Page stand = referee.open("/desk/stand/" + segment).press("form[action$=/call]");
			assertThat(stand.status()).isEqualTo(200);
			String team = mark(tablets);
			referee.open("/desk/stand/" + segment).press("form[action$=/close]");
			skated.add(EntryCards.skated(team, this.sent.get(team)));
			places = published(kind, number);
			Map<String, Integer> expected = new HashMap<>();
			PlacementTabulation.ofCards(PlacementRules.majority(kind), skated)
				.rows()
				.forEach((row) -> expected.put(row.entry(), row.place()));
			assertThat(places).isEqualTo(expected);
		}
		return places;
	}

	private String mark(List<String> tablets) {
		String team = "";
		List<CardMarks> cards = new ArrayList<>();
		for (String token : tablets) {
			Visitor tablet = new Visitor(this.port);
			JsonNode now = this.json
				.readTree(tablet.json("GET", "/api/judge/table", "", "Authorization", "Bearer " + token).body())
				.get("now");
			team = now.get("team").asString();
			CardMarks marks = new CardMarks(mark(), mark());
			String body = "{\"performance\":\"%s\",\"sequence\":1,\"first\":%s,\"second\":%s}".formatted(
					now.get("performance").asString(), Hundredths.decimal(marks.first()),
					Hundredths.decimal(marks.second()));
			String path = "/api/cards/" + UUID.randomUUID();
			String answer = "";
			// Each card is sent twice: the answer is the same, the card is one.
			for (int time = 0; time < 2; time++) {
				HttpResponse<String> received = tablet.json("PUT", path, body, "Authorization", "Bearer " + token);
				assertThat(received.statusCode()).as(received.body()).isEqualTo(200);
				assertThat(answer).isIn("", received.body());
				answer = received.body();
			}
			cards.add(marks);
		}
		this.sent.put(team, cards);
		return team;
	}

	private int mark() {
		return 10 * (40 + this.random.nextInt(18));
	}

	private Map<String, Integer> published(SegmentKind kind, int skated) {
		JsonNode standing = segmentJson(kind);
		assertThat(standing.get("standing").get("skated").asInt()).isEqualTo(skated);
		Map<String, Integer> places = new HashMap<>();
		standing.get("standing")
			.get("rows")
			.forEach((row) -> places.put(row.get("team").asString(), row.get("place").asInt()));
		return places;
	}

	private JsonNode segmentJson(SegmentKind kind) {
		return api("/events/junior/segments/" + ((kind == SegmentKind.SHORT) ? "short-programme" : "free-skating"));
	}

	private JsonNode api(String rest) {
		Visitor spectator = new Visitor(this.port);
		String slug = "";
		for (JsonNode competition : this.json.readTree(spectator.json("GET", "/api/public/competitions", "").body())
			.get("competitions")) {
			if (competition.get("name").asString().startsWith("Frostmoor Cup")) {
				slug = competition.get("slug").asString();
			}
		}
		return this.json.readTree(spectator.json("GET", "/api/public/competitions/" + slug + rest, "").body());
	}

	private void finish(String segment, Visitor referee, Visitor accountant) {
		String results = "/desk/results/" + segment;
		accountant.open(results).press("form[action$=/posting]");
		Visitor.Page wrong = referee.open(results + "/signature?signatory=REFEREE")
			.submit("form[action$=/signature]", Map.of("password", "not this one"));
		assertThat(wrong.text()).contains("That is not your password.");
		referee.open(results + "/signature?signatory=REFEREE")
			.submit("form[action$=/signature]", Map.of("password", Crew.PASSWORD));
		Visitor.Page signed = accountant.open(results + "/signature?signatory=ACCOUNTANT")
			.submit("form[action$=/signature]", Map.of("password", Crew.PASSWORD));
		assertThat(signed.text()).contains("official");
	}

	private void compareEvent(Map<String, Integer> first, Map<String, Integer> second) {
		List<EntryPlaces> places = first.keySet()
			.stream()
			.map((team) -> EntryPlaces.of(team, first.get(team), second.get(team)))
			.toList();
		Map<String, BigDecimal> expected = new HashMap<>();
		Combination.combine(CombinationRules.ofFactors(50, 100), places)
			.rows()
			.forEach((row) -> expected.put(row.place() + " " + row.entry(), BigDecimal.valueOf(row.total(), 2)));
		JsonNode event = api("/events/junior");
		Map<String, BigDecimal> published = new HashMap<>();
		event.get("standing")
			.get("rows")
			.forEach((row) -> published.put(row.get("place").asInt() + " " + row.get("team").asString(),
					row.get("total").decimalValue().setScale(2)));
		assertThat(published).isEqualTo(expected);
		assertThat(event.get("standing").get("state").asString()).isEqualToIgnoringCase("official");
	}

	private static String lastOf(String path) {
		String bare = path.replaceAll("[?#].*", "");
		return bare.substring(bare.lastIndexOf('/') + 1);
	}

}
