package rimebook;

import java.math.BigDecimal;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.competition.RuleSets;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.Amending;
import rimebook.performances.Amendments;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.performances.StatusCorrection;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.JudgedElement;
import rimebook.tabulation.points.Performance;
import rimebook.tabulation.points.PerformanceScore;
import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.PointsCombination;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.PointsStanding;
import rimebook.tabulation.points.PointsTabulation;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * An event judged by points, over HTTP only: an accountant keys in elements and
 * deductions, two people key in paper cards, tablets send JSON, the referee calls and
 * closes. Every published total and place is compared with what the pure function makes
 * of what was sent.
 */
@WholeApplication
class PointsSegmentIntegrationTests {

	private static final int TEAMS = 4;

	private static final int JUDGES = 6;

	private static final List<String> CODES = List.of("I4+pi3", "ME4<", "NHE3+s4", "TwE3", "AC2");

	private static final List<String> COMPONENTS = List.of("Composition", "Presentation", "Skating Skills");

	@Autowired
	private ApplicationContext context;

	@Autowired
	private RecordVerification record;

	@Autowired
	private RuleSets ruleSets;

	@LocalServerPort
	private int port;

	private final Random random = new Random(11);

	private final JsonMapper json = JsonMapper.shared();

	private SmallCompetition day;

	private Visitor referee;

	private Visitor accountant;

	private Visitor second;

	private List<String> tablets;

	@BeforeEach
	void everybodyComes() {
		this.day = SmallCompetition.running(this.context, TEAMS,
				new DraftEvent("Senior",
						DraftEvent.Judging.byPoints(JUDGES,
								new DraftEvent.PointsChoice("synchronized-2025-26", "senior")),
						List.of(CompetitionFixtures.aShort(), CompetitionFixtures.aFree()))
					.signedAtOnce());
		this.referee = Crew.visitor(this.context, Role.REFEREE);
		this.accountant = Crew.visitor(this.context, Role.ACCOUNTANT);
		this.second = Crew.visitor(this.context, Role.ACCOUNTANT);
		this.context.getBean(Panels.class).issueCodes(this.day.event().id(), SmallCompetition.REFEREE);
		this.tablets = this.day.seats().stream().map(this::pair).toList();
	}

	private String pair(SeatView seat) {
		HttpResponse<String> paired = new Visitor(this.port).json("POST", "/api/seat-pairings",
				"{\"code\":\"" + seat.code() + "\"}");
		return this.json.readTree(paired.body()).get("token").asString();
	}

	@Test
	void everyPublishedTotalIsThatOfThePureFunction() {
		PointsStanding first = skate(1);
		PointsStanding second = skate(2);
		showsEveryStep(first);
		JsonNode event = api("");
		Map<String, BigDecimal> expected = new HashMap<>();
		PointsCombination.ofStandings(this.ruleSets.of(this.day.event()).disqualifiedPlaces(), List.of(first, second))
			.rows()
			.forEach((row) -> expected.put(row.place() + " " + row.entry(), row.total().toDecimal()));
		assertThat(published(event)).isEqualTo(expected);
		event.get("standing").get("rows").forEach((row) -> assertThat(row.get("why").asString()).contains("points ("));
		assertThat(this.record.verify().isWhole()).isTrue();
	}

	/** The page, the data and the table say how each total was made. */
	private void showsEveryStep(PointsStanding standing) {
		JsonNode rows = api(segments(1)).get("standing").get("rows");
		for (int i = 0; i < TEAMS; i++) {
			PerformanceScore score = standing.rows().get(i).score();
			JsonNode published = rows.get(i).get("score");
			assertThat(published.get("elementPoints").decimalValue())
				.isEqualByComparingTo(score.elementPoints().toDecimal());
			assertThat(published.get("componentPoints").decimalValue())
				.isEqualByComparingTo(score.componentPoints().toDecimal());
			assertThat(published.get("deducted").decimalValue()).isEqualByComparingTo(new BigDecimal("2.00"));
			assertThat(published.get("elements").get(5).get("worth").asString()).isEqualTo("NO_VALUE");
			for (int line = 0; line < CODES.size(); line++) {
				List<String> uses = new ArrayList<>();
				published.get("elements")
					.get(line)
					.get("grades")
					.forEach((mark) -> uses.add(mark.get("use").asString()));
				assertThat(uses).isEqualTo(
						score.elements().get(line).panel().marks().stream().map((mark) -> mark.use().name()).toList());
			}
		}
		String path = this.day.competition().slug() + "/events/senior" + segments(1) + ".csv";
		assertThat(new Visitor(this.port).json("GET", "/api/public/competitions/" + path, "").body())
			.contains("total,elements,components,deductions,why", "," + standing.rows().get(0).score().total() + ",");
		Visitor.Page page = new Visitor(this.port)
			.open("/follow/" + this.day.competition().slug() + "/senior/" + this.day.event().segments().get(0).slug());
		assertThat(page.document().select(".standing td.total").eachText())
			.containsExactlyElementsOf(standing.rows().stream().map((row) -> row.score().total().toString()).toList());
		assertThat(page.document().select("tbody").first().select("ol.given .left-out").eachText())
			.allMatch((mark) -> mark.matches("Judge \\d: \\(.+\\) left out"))
			.hasSize(2 * (CODES.size() + COMPONENTS.size()));
	}

	private PointsStanding skate(int segment) {
		this.day.open(segment);
		List<Performance> skated = new ArrayList<>();
		PointsStanding standing = null;
		SegmentKind kind = (segment == 1) ? SegmentKind.SHORT : SegmentKind.FREE;
		for (int number = 1; number <= TEAMS; number++) {
			this.referee.open(stand(segment)).press("form[action$=/call]");
			skated.add(judge(segment));
			Visitor.Page closed = this.referee.open(stand(segment)).press("form[action$=/close]");
			assertThat(closed.text()).contains("The cards are closed and the standing is out.");
			standing = PointsTabulation.standing(rules().segment(kind, "senior"), skated);
			Map<String, BigDecimal> expected = new HashMap<>();
			standing.rows()
				.forEach((row) -> expected.put(row.place() + " " + row.entry(), row.score().total().toDecimal()));
			assertThat(published(api(segments(segment)))).isEqualTo(expected);
		}
		return standing;
	}

	/** Key in elements and a deduction; two cards come on paper, the others by tablet. */
	private Performance judge(int segment) {
		String keying = "/desk/keying/" + this.day.segment(segment);
		callElements(keying);
		Visitor.Page noted = this.accountant.open(keying + "/deductions")
			.submit("main form", Map.of("rows[0].item", "fall", "rows[0].count", "2"));
		assertThat(noted.text()).contains("The deductions are received.", "Fall: -2.00 (2)");
		JsonNode task = table(0);
		List<List<Integer>> grades = new ArrayList<>();
		List<List<Integer>> marks = new ArrayList<>();
		for (int seat = 0; seat < JUDGES; seat++) {
			List<Integer> given = IntStream.range(0, CODES.size())
				.mapToObj((i) -> this.random.nextInt(11) - 5)
				.toList();
			List<Integer> components = COMPONENTS.stream().map((name) -> 25 * (20 + this.random.nextInt(20))).toList();
			send(keying, task, seat, given, components);
			grades.add(given);
			marks.add(components);
		}
		return performance(task.get("now").get("team").asString(), grades, marks);
	}

	private void callElements(String keying) {
		Map<String, String> typed = new LinkedHashMap<>();
		for (int i = 0; i < CODES.size(); i++) {
			typed.put("rows[" + i + "].code", CODES.get(i));
		}
		typed.put("rows[3].base", "5.5");
		typed.put("rows[5].code", "SySp");
		typed.put("rows[5].worth", "NO_VALUE");
		Visitor.Page called = this.accountant.open(keying + "/elements").submit("main form", typed);
		assertThat(called.text()).contains("The list of elements is received.",
				"move element, level 4, downgraded once", "Still missing: Judge 1, Judge 2",
				"the technical controller's authorisation");
		Visitor.Page authorised = this.accountant.open(keying + "/authorisation")
			.submit("main form", Map.of("controller", "Ada Edge"));
		assertThat(authorised.text()).contains("The list of elements is authorised.",
				"authorised by Ada Edge on paper, seen by The accountant");
	}

	private void send(String keying, JsonNode task, int seat, List<Integer> grades, List<Integer> components) {
		if (seat < 2) {
			Map<String, String> typed = new LinkedHashMap<>();
			IntStream.range(0, grades.size()).forEach((i) -> typed.put("lines[" + i + "].typed", "" + grades.get(i)));
			IntStream.range(0, components.size())
				.forEach((i) -> typed.put("lines[" + (grades.size() + i) + "].typed",
						new Points(components.get(i)).toString()));
			Visitor.Page once = this.accountant.open(keying + "/cards/" + (seat + 1)).submit("main form", typed);
			assertThat(once.text()).contains("Judge " + (seat + 1) + ": keyed once.");
			assertThat(once.path()).endsWith("/cards/" + (seat + 2));
			Visitor.Page blank = this.second.open(keying + "/cards/" + (seat + 1));
			assertThat(blank.document().select("main input[type=text]").eachAttr("value")).containsOnly("");
			assertThat(blank.submit("main form", typed).text())
				.contains("The card of Judge " + (seat + 1) + " is received.");
			return;
		}
		String path = "/api/points-cards/" + UUID.randomUUID();
		String body = body(task, grades, components);
		HttpResponse<String> received = put(path, body, seat);
		assertThat(received.statusCode()).as(received.body()).isEqualTo(200);
		assertThat(put(path, body, seat).body()).as("the same card again").isEqualTo(received.body());
	}

	private String body(JsonNode task, List<Integer> grades, List<Integer> components) {
		Map<String, Object> given = new LinkedHashMap<>();
		JsonNode elements = task.get("points").get("elements");
		IntStream.range(0, grades.size())
			.forEach((i) -> given.put(elements.get(i).get("id").asString(), grades.get(i)));
		Map<String, Object> marks = new LinkedHashMap<>();
		IntStream.range(0, components.size())
			.forEach((i) -> marks.put(COMPONENTS.get(i), new Points(components.get(i)).toDecimal()));
		return this.json.writeValueAsString(Map.of("performance", task.get("now").get("performance").asString(),
				"sequence", 1, "grades", given, "components", marks));
	}

	private HttpResponse<String> put(String path, String body, int seat) {
		return new Visitor(this.port).json("PUT", path, body, "Authorization", "Bearer " + this.tablets.get(seat));
	}

	private JsonNode table(int seat) {
		return this.json.readTree(new Visitor(this.port)
			.json("GET", "/api/judge/table", "", "Authorization", "Bearer " + this.tablets.get(seat))
			.body());
	}

	private Performance performance(String team, List<List<Integer>> grades, List<List<Integer>> marks) {
		List<JudgedElement> elements = new ArrayList<>();
		for (int i = 0; i < CODES.size(); i++) {
			int element = i;
			elements.add(new JudgedElement(i + 1, CODES.get(i), JudgedElement.ElementWorth.COUNTS,
					(i == 3) ? new Points(550) : null, grades.stream().map((card) -> card.get(element)).toList()));
		}
		elements.add(JudgedElement.without(6, "SySp", JudgedElement.ElementWorth.NO_VALUE));
		List<JudgedComponent> components = new ArrayList<>();
		for (int i = 0; i < COMPONENTS.size(); i++) {
			int component = i;
			components.add(new JudgedComponent(COMPONENTS.get(i),
					marks.stream().map((card) -> new Points(card.get(component))).toList()));
		}
		DeductionRule.Deduction fall = rules().deduction("fall").orElseThrow().take(2, "accountant");
		return Performance.skated(team, elements, components, List.of(fall));
	}

	private static Map<String, BigDecimal> published(JsonNode body) {
		Map<String, BigDecimal> totals = new HashMap<>();
		body.get("standing")
			.get("rows")
			.forEach((row) -> totals.put(row.get("place").asInt() + " " + row.get("team").asString(),
					row.get("total").decimalValue().setScale(2)));
		return totals;
	}

	@Test
	void whatIsWrongIsSaidBesideItsFieldAndNothingTypedIsLost() {
		this.day.open(1);
		this.referee.open(stand(1)).press("form[action$=/call]");
		String keying = "/desk/keying/" + this.day.segment(1);
		Visitor.Page early = this.accountant.open(keying + "/cards/1").submit("main form", Map.of());
		assertThat(early.status()).isEqualTo(422);
		assertThat(early.text()).contains("key the list of elements first");
		Visitor.Page unknown = this.accountant.open(keying + "/elements")
			.submit("main form", Map.of("rows[0].code", "ME9", "rows[1].base", "3.50", "rows[2].code", "TwE3"));
		assertThat(unknown.status()).isEqualTo(422);
		assertThat(unknown.text()).contains("no code ME9", "without a code");
		assertThat(unknown.document().select("input[name=rows[2].code]").val()).isEqualTo("TwE3");
		callElements(keying);
		Visitor.Page card = this.accountant.open(keying + "/cards/1")
			.submit("main form", Map.of("lines[0].typed", "+3", "lines[1].typed", "6", "lines[5].typed", "7,3"));
		assertThat(card.status()).isEqualTo(422);
		assertThat(card.text()).contains("Element 2 (ME4<) needs a whole grade from -5 to +5.",
				"Composition needs a mark from 0.25 to 10.00", "Skating Skills needs a mark");
		assertThat(card.document().select("input[name=lines[0].typed]").val()).isEqualTo("+3");
		assertThat(card.document().select("input[name=lines[5].typed]").val()).isEqualTo("7,3");
		Visitor.Page deduction = this.accountant.open(keying + "/deductions")
			.submit("main form", Map.of("rows[0].item", "fall", "rows[0].count", "some"));
		assertThat(deduction.status()).isEqualTo(422);
		assertThat(deduction.text()).contains("Please type how many");
		assertThat(this.referee.open(stand(1)).text()).contains("Still missing: Judge 1, Judge 2");
	}

	@Test
	void paperIsConfirmedForTheListThatWasSeenAndEveryReviewSettled() {
		this.day.open(1);
		this.referee.open(stand(1)).press("form[action$=/call]");
		String keying = "/desk/keying/" + this.day.segment(1);
		callElements(keying);
		Visitor.Page seen = this.accountant.open(keying + "/authorisation");
		this.accountant.open(keying + "/elements").submit("main form", Map.of("rows[6].code", "ME4"));
		assertThat(table(0).get("points").get("authorised").asBoolean()).isFalse();
		Visitor.Page stale = seen.submit("main form", Map.of("controller", "Ada Edge"));
		assertThat(stale.status()).isEqualTo(422);
		assertThat(stale.text()).contains("was changed meanwhile; nothing was authorised");
		Visitor.Page nameless = this.accountant.open(keying + "/authorisation").press("main form");
		assertThat(nameless.text()).contains("“Technical controller who signed” is empty");
		nameless.submit("main form", Map.of("controller", "Ada Edge"));
		assertThat(table(0).get("points").get("authorised").asBoolean()).isTrue();
		assertThat(this.referee.open(stand(1)).text()).doesNotContain("the technical controller's authorisation");
	}

	@Test
	void tabletsAreToldWhichFieldIsWrong() {
		this.day.open(1);
		this.referee.open(stand(1)).press("form[action$=/call]");
		JsonNode before = table(2);
		assertThat(before.get("method").asString()).isEqualTo("POINTS");
		List<Integer> none = List.of();
		refused(422, "elements-not-called", "grades", body(before, none, List.of(700, 700, 700)));
		callElements("/desk/keying/" + this.day.segment(1));
		JsonNode task = table(2);
		List<Integer> grades = List.of(1, 2, 0, -1, 3);
		List<Integer> marks = List.of(700, 725, 750);
		String first = task.get("points").get("elements").get(0).get("id").asString();
		refused(422, "grade-out-of-range", "grades[" + first + "]", body(task, List.of(6, 2, 0, -1, 3), marks));
		refused(422, "grade-missing", null, body(task, List.of(1, 2), marks));
		refused(422, "component-missing", "components[Skating Skills]", body(task, grades, List.of(700, 725)));
		refused(422, "component-mark-out-of-range", "components[Composition]",
				body(task, grades, List.of(710, 725, 750)));
		refused(422, "mark-not-valid", "grades[" + first + "]",
				body(task, grades, marks).replace(first + "\":1", first + "\":1.5"));
		refused(422, "points-card-expected", null, null);
		String path = "/api/points-cards/" + UUID.randomUUID();
		assertThat(put(path, body(task, grades, marks), 2).statusCode()).isEqualTo(200);
		assertThat(put(path, body(task, List.of(5, 5, 5, 5, 5), marks), 2).statusCode()).isEqualTo(409);
		refused(409, "card-sequence-taken", null, body(task, List.of(5, 5, 5, 5, 5), marks));
	}

	private void refused(int status, String code, String field, String body) {
		String path = (body != null) ? "/api/points-cards/" : "/api/cards/";
		String sent = (body != null) ? body : "{\"performance\":\"%s\",\"sequence\":1,\"first\":5.0,\"second\":5.0}"
			.formatted(table(2).get("now").get("performance").asString());
		HttpResponse<String> answer = put(path + UUID.randomUUID(), sent, 2);
		JsonNode problem = this.json.readTree(answer.body());
		assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
		assertThat(problem.get("code").asString()).isEqualTo(code);
		if (field != null) {
			assertThat(problem.get("errors").get(0).get("field").asString()).isEqualTo(field);
		}
	}

	@Test
	void theMarksOfACardThatNeverCameAreAbsentAndNeverZero() {
		this.day.open(1);
		this.referee.open(stand(1)).press("form[action$=/call]");
		callElements("/desk/keying/" + this.day.segment(1));
		JsonNode task = table(0);
		List<List<Integer>> grades = new ArrayList<>();
		List<List<Integer>> marks = new ArrayList<>();
		for (int seat = 0; seat < JUDGES - 1; seat++) {
			grades.add(List.of(seat - 2, 1, 2, seat, -1));
			marks.add(List.of(500 + 25 * seat, 600, 700));
			assertThat(
					put("/api/points-cards/" + UUID.randomUUID(), body(task, grades.get(seat), marks.get(seat)), seat)
						.statusCode())
				.isEqualTo(200);
		}
		Map<String, String> without = Map.of("absent", this.day.seats().get(JUDGES - 1).id().toString(), "absentRule",
				"Rule 4", "absentReason", "The tablet fell into the rink");
		Visitor.Page closed = this.referee.open(stand(1)).submit("form[action$=/close-without]", without);
		assertThat(closed.text()).contains("without the absent judge’s",
				"No. 1 was closed without the card of Judge 6 (Rule 4): its marks are absent.");
		JsonNode row = api(segments(1)).get("standing").get("rows").get(0);
		JsonNode last = row.get("score").get("elements").get(0).get("grades").get(JUDGES - 1);
		assertThat(last.get("use").asString()).isEqualTo("ABSENT");
		PointsStanding expected = PointsTabulation.standing(rules().segment(SegmentKind.SHORT, "senior"),
				List.of(withoutDeductions(performance(row.get("team").asString(), grades, marks))));
		assertThat(row.get("total").decimalValue())
			.isEqualByComparingTo(expected.rows().get(0).score().total().toDecimal());
	}

	private static Performance withoutDeductions(Performance performance) {
		return Performance.skated(performance.entry(), performance.elements(), performance.components(), List.of());
	}

	@Test
	void nothingIsTakenOnceTheCardsAreClosed() {
		this.day.open(1);
		this.referee.open(stand(1)).press("form[action$=/call]");
		String keying = "/desk/keying/" + this.day.segment(1);
		Visitor.Page elements = this.accountant.open(keying + "/elements");
		JsonNode now = table(3);
		judge(1);
		assertThat(this.accountant.open(keying).text())
			.contains("Everything is there; the referee can close the cards.");
		this.referee.open(stand(1)).press("form[action$=/close]");
		Visitor.Page late = elements.submit("main form", Map.of("rows[0].code", "TwE3"));
		assertThat(late.status()).isEqualTo(422);
		assertThat(late.text()).contains("Another team is on the ice", "or none");
		refused(409, "card-closed", null,
				body(this.json.readTree(now.toString()
					.replace("\"elements\":[]", "\"elements\":[{\"id\":\"" + UUID.randomUUID() + "\"}]")), List.of(1),
						List.of(700, 700, 700)));
	}

	@Test
	void aTabletIsGivenTheCardOfPointsJudging() {
		HttpResponse<String> card = new Visitor(this.port).json("GET", "/judge/card", "", "Authorization",
				"Bearer " + this.tablets.get(0));
		assertThat(card.statusCode()).isEqualTo(200);
		assertThat(card.body()).contains(">Judge 1<", ">Senior<", "/js/points-card").doesNotContain("/js/pair-card");
	}

	@Test
	void whoDoesNotFinishOrIsDisqualifiedHasNoPlace() {
		this.day.open(1);
		this.referee.open(stand(1)).press("form[action$=/call]");
		judge(1);
		this.referee.open(stand(1)).press("form[action$=/close]");
		this.referee.open(stand(1)).press("form[action$=/call]");
		Performance second = judge(1);
		this.referee.open(stand(1)).press("form[action$=/close]");
		this.referee.open(stand(1)).press("form[action$=/call]");
		end(2, PerformanceStatus.NOT_FINISHED);
		this.context.getBean(Amendments.class)
			.apply(StatusCorrection.StatusAmendment.on(this.day.performances(1).get(0).id(),
					PerformanceStatus.DISQUALIFIED), new StatusCorrection.StatusAmendment(PerformanceStatus.CLOSED),
					new Amending.Approval("As the rule says.", Sentence.said("by two"), SmallCompetition.REFEREE));
		JsonNode rows = api(segments(1)).get("standing").get("rows");
		assertThat(rows.get(0).get("team").asString()).isEqualTo(second.entry());
		assertThat(rows.get(0).get("place").asInt()).isEqualTo(1);
		assertThat(rows.get(1).get("status").asString()).isEqualTo("NOT_FINISHED");
		assertThat(rows.get(2).get("status").asString()).isEqualTo("DISQUALIFIED");
		assertThat(rows.get(2).get("place").isNull()).isTrue();
		assertThat(new Visitor(this.port)
			.open("/follow/" + this.day.competition().slug() + "/senior" + segments(1).replace("/segments", ""))
			.text()).contains("Did not finish", "Disqualified");
	}

	private void end(int index, PerformanceStatus how) {
		PerformanceView performance = this.day.performances(1).get(index);
		this.context.getBean(SegmentRun.class)
			.end(performance.id(), performance.version(), how, "As the rule says.", SmallCompetition.REFEREE);
	}

	@Test
	void whatTheTechnicalPanelSentIsCorrectedByTwoPeople() {
		this.day.open(1);
		this.referee.open(stand(1)).press("form[action$=/call]");
		judge(1);
		this.referee.open(stand(1)).press("form[action$=/close]");
		BigDecimal before = total();
		Visitor.Page further = proposeSheet("element", Map.of("line", "called:+2", "code", "ME4"));
		assertThat(further.status()).isEqualTo(422);
		assertThat(further.text()).contains("Element 2 (ME4) would count, but has no grade of Judge 1, Judge 2",
				"Rule 123 paragraph 4");
		assertThat(proposeSheet("element", Map.of("line", "called:6", "code", "SySp1")).text())
			.contains("would count, but has no grade");
		assertThat(proposeSheet("element", Map.of("line", "called:2", "code", "ME7")).text()).contains("no code 'ME7'");
		assertThat(proposeSheet("element", Map.of("line", "called:2", "code", "ME4<")).text())
			.contains("nothing to correct");
		assertThat(proposeSheet("element", Map.of("line", "called:2", "code", "ME4", "agreed", " ")).text())
			.contains("“Who of the technical panel agrees” is empty");
		assertThat(proposeSheet("deduction", Map.of("line", "deducted:1", "item", "fall", "count", "x")).text())
			.contains("whole number from 1 to 999");
		approve(proposeSheet("deduction", Map.of("line", "deducted:1", "item", "fall", "count", "1")),
				"deduction 1: fall 2 became fall 1");
		assertThat(total()).isEqualByComparingTo(before.add(new BigDecimal("1.00")));
		approve(proposeSheet("deduction", Map.of("line", "deducted:+1", "item", "costume")), "further deduction");
		approve(proposeSheet("deduction", Map.of("line", "deducted:2")), "costume 1 became nothing");
		assertThat(total()).isEqualByComparingTo(before.add(new BigDecimal("1.00")));
		approve(proposeSheet("element", Map.of("line", "called:2", "code", "ME4")), "element 2: ME4< became ME4");
		approve(proposeSheet("element", Map.of("line", "called:+1", "code", "AC1", "worth", "TOO_MANY")),
				"AC1 (one element too many: no value)");
		approve(proposeSheet("element", Map.of("line", "called:1")), "became nothing");
		approve(proposeSheet("element", Map.of("line", "called:5", "code", "AC2", "worth", "NO_VALUE")),
				"element 5: AC2 became AC2 (no value)");
		JsonNode elements = api(segments(1)).get("standing").get("rows").get(0).get("score").get("elements");
		assertThat(elements.size()).isEqualTo(6);
		assertThat(elements.get(1).get("code").asString()).isEqualTo("ME4");
		assertThat(elements.get(4).get("worth").asString()).isEqualTo("NO_VALUE");
		assertThat(this.record.verify().isWhole()).isTrue();
	}

	private BigDecimal total() {
		return api(segments(1)).get("standing").get("rows").get(0).get("total").decimalValue();
	}

	private Visitor.Page proposeSheet(String what, Map<String, String> typed) {
		Map<String, String> all = new LinkedHashMap<>(
				Map.of("performance", this.day.performances(1).get(0).id().toString(), "agreed",
						"Ada Edge, Bo Arc, Cy Turn, Di Key", "reason", "Typed wrongly."));
		all.putAll(typed);
		return this.accountant.open("/desk/protests/" + this.day.segment(1) + "/corrections/new/" + what)
			.submit("main form", all);
	}

	private void approve(Visitor.Page proposed, String expected) {
		assertThat(proposed.text()).contains("The correction is proposed.");
		String path = proposed.document().select("main table.rows a[href*=/corrections/]").last().attr("href");
		assertThat(this.accountant.open(path).submit("main form", Map.of()).text()).contains("somebody other than");
		Visitor.Page decide = this.referee.open(path);
		assertThat(decide.text()).contains("What it would change");
		assertThat(decide.press("main form").text()).contains("The corrected result is published.");
		JsonNode standing = api(segments(1));
		assertThat(standing.toString()).contains(expected);
	}

	@Test
	void aMistypedGradeIsCorrectedByTwoPeople() {
		this.day.open(1);
		this.referee.open(stand(1)).press("form[action$=/call]");
		Performance performance = judge(1);
		this.referee.open(stand(1)).press("form[action$=/close]");
		String protests = "/desk/protests/" + this.day.segment(1);
		Map<String, String> typed = Map.of("performance", this.day.performances(1).get(0).id().toString(), "seat",
				this.day.seats().get(3).id().toString(), "line", "element:2", "value", "7", "reason",
				"The keyboard stuck; the paper says so.");
		Visitor.Page refused = this.accountant.open(protests + "/corrections/new").submit("main form", typed);
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.text()).contains("The grade of element 2 (ME4<) is 7; it must be from -5 to +5.");
		int old = performance.elements().get(1).grades().get(3);
		Map<String, String> right = new HashMap<>(typed);
		right.put("value", (old == 5) ? "-5" : "5");
		Visitor.Page proposed = this.accountant.open(protests + "/corrections/new").submit("main form", right);
		Visitor.Page decision = this.referee.open(proposed.document().select("a[href*=/corrections/0]").attr("href"));
		assertThat(decision.text()).contains("Element 2", "What it would change");
		decision.submit("form[action$=/approval]", Map.of());
		List<Integer> grades = new ArrayList<>(performance.elements().get(1).grades());
		grades.set(3, Integer.parseInt(right.get("value")));
		List<JudgedElement> elements = new ArrayList<>(performance.elements());
		elements.set(1, new JudgedElement(2, "ME4<", JudgedElement.ElementWorth.COUNTS, null, grades));
		Performance corrected = Performance.skated(performance.entry(), elements, performance.components(),
				performance.deductions());
		JsonNode standing = api(segments(1)).get("standing");
		assertThat(standing.get("rows").get(0).get("total").decimalValue()).isEqualByComparingTo(
				PointsTabulation.score(rules().segment(SegmentKind.SHORT, "senior"), corrected).total().toDecimal());
		assertThat(standing.get("cause").asString()).isEqualTo("CORRECTED");
		assertThat(standing.get("note").asString()).contains("Judge 4, element 2", "The keyboard stuck");
	}

	@Test
	void anElementPutInAsksEveryJudgeForItsGradeAndKeepsTheOthers() {
		this.day.open(1);
		this.referee.open(stand(1)).press("form[action$=/call]");
		String keying = "/desk/keying/" + this.day.segment(1);
		judge(1);
		Visitor.Page widened = this.accountant.open(keying + "/elements").submit("main form", Map.of("insert", "1"));
		Visitor.Page changed = widened.submit("main form", Map.of("rows[1].code", "PB3"));
		assertThat(changed.text()).contains("Still missing: Judge 1 (element 2), Judge 2 (element 2)");
		Visitor.Page refused = this.referee.open(stand(1));
		assertThat(refused.document().select("form[action$=/close]")).isEmpty();
		Visitor.Page card = this.accountant.open(keying + "/cards/1");
		assertThat(card.document().select("input[name=lines[1].typed]").val()).isEmpty();
		assertThat(card.document().select("input[name=lines[2].typed]").val()).isNotEmpty();
	}

	private PointsRules rules() {
		return this.ruleSets.of(this.day.event());
	}

	private String stand(int segment) {
		return "/desk/stand/" + this.day.segment(segment);
	}

	private String segments(int segment) {
		return "/segments/" + this.day.event().segments().get(segment - 1).slug();
	}

	private JsonNode api(String rest) {
		String path = "/api/public/competitions/" + this.day.competition().slug() + "/events/senior" + rest;
		return this.json.readTree(new Visitor(this.port).json("GET", path, "").body());
	}

}
