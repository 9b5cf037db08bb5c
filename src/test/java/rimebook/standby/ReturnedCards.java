package rimebook.standby;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.RimebookApplication;
import rimebook.audit.Anchor;
import rimebook.audit.AnchorCheck;
import rimebook.audit.RecordAnchors;
import rimebook.audit.RecordVerification;
import rimebook.pages.Alarm;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.CardBook;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.ReturnedCard;
import rimebook.placement.MarkSubmission;
import rimebook.points.CalledListView;
import rimebook.points.ElementCalls;
import rimebook.points.PointsMarks;
import rimebook.points.PointsSubmission;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RimebookException;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.CalledElements;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/**
 * The service goes back to a copy in the middle of a segment; its tablets do not. Each
 * test has performances of its own, so that the service goes back but once.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class ReturnedCards {

	private final Map<MarkSubmission.SubmitCard, CardBook.Acknowledgement> acknowledged = new HashMap<>();

	private final Map<MarkSubmission.SubmitCard, SeatView> senders = new HashMap<>();

	private ConfigurableApplicationContext service;

	private SmallCompetition day;

	private PerformanceView first;

	private PerformanceView second;

	private PerformanceView third;

	private PointsDay points;

	private ServiceLife before;

	private Anchor known;

	private Anchor lost;

	private String alarmAtFirst;

	/** Where the service has its database. */
	abstract List<String> firstLaptop() throws Exception;

	/** The moment that it goes back to. */
	abstract void copy(ConfigurableApplicationContext service) throws Exception;

	/** Its last moment. */
	abstract void beforeItDies(ConfigurableApplicationContext service) throws Exception;

	/** With what it goes on. */
	abstract List<String> nextLaptop() throws Exception;

	@BeforeAll
	void goBackInTheMiddleOfASegment() throws Exception {
		this.service = laptop(firstLaptop());
		this.day = SmallCompetition.running(this.service, 4, 3);
		this.day.open(1);
		this.first = this.day.callNext(1);
		send(this.first, 0, 500);
		this.points = PointsDay.begin(this.service);
		this.known = head();
		copy(this.service);
		this.points.send(this.service, this.points.toFirstList());
		new CalledElements(this.service, this.points.performance()).insert("AC2");
		this.points.send(this.service, this.points.toSecondList(this.service));
		send(this.first, 1, 510);
		send(this.first, 2, 520);
		this.day.close(this.first);
		this.second = callAndClose(400);
		this.third = callAndClose(300);
		this.before = this.service.getBean(ServiceLives.class).current();
		this.lost = head();
		beforeItDies(this.service);
		this.service.close();
		this.service = laptop(nextLaptop());
		this.day = this.day.at(this.service);
		this.alarmAtFirst = alarm();
	}

	@AfterAll
	void stop() throws IOException {
		this.service.close();
	}

	@Test
	void everyAcknowledgedCardComesBackOnceWithItsFirstReceipt() {
		assertThat(this.day.now(this.first).status()).isEqualTo(PerformanceStatus.ON_ICE);
		assertThat(this.day.now(this.second).status()).isEqualTo(PerformanceStatus.WAITING);
		assertThat(rows(this.first)).isEqualTo(1);
		List<MarkSubmission.SubmitCard> cards = Stream.concat(of(this.first), of(this.second)).toList();
		// Twice: an answer may be lost on its way.
		cards.forEach((card) -> assertThat(takeBack(card)).isEqualTo(this.acknowledged.get(card)));
		cards.forEach((card) -> assertThat(takeBack(card)).isEqualTo(this.acknowledged.get(card)));
		assertThat(rows(this.first) + rows(this.second)).isEqualTo(6);
		assertThat(returned(this.first)).isEqualTo(2);
		assertThat(returned(this.second)).isEqualTo(3);

		this.day.close(this.first);
		assertThat(this.day.callNext(1).id()).isEqualTo(this.second.id());
		this.day.close(this.second);
		assertThat(openOf(this.first)).isEmpty();
		assertThat(openOf(this.second)).isEmpty();
		MarkSubmission.SubmitCard known = of(this.first).findFirst().orElseThrow();
		assertThat(takeBack(known)).as("the same once more after the close").isEqualTo(this.acknowledged.get(known));
		expectRefused("card-closed", other(known, 2), returnedAt(known));
		assertThat(this.service.getBean(RecordVerification.class).verify().isWhole()).isTrue();
		assertThat(this.service.getBean(RecordVerification.class).compareStored().agrees()).isTrue();
	}

	@Test
	void anchorsOfLostLinesAreToldAsLostAndEarlierOnesHaveToFit() {
		AnchorCheck.Finding finding = compare(this.known, this.lost);
		assertThat(finding.agrees()).isTrue();
		assertThat(finding.fitting()).isOne();
		assertThat(finding.notes()).satisfiesExactly((note) -> assertThat(note).contains(
				"Line " + this.lost.line() + " was lost when the service started from a copy at ", "this is expected"),
				(note) -> assertThat(note).contains("a copy that held lines 1 to " + this.known.line(),
						"Whoever knows that there was none"));
		String other = "0badcafe".repeat(8);
		Anchor changed = new Anchor(this.known.line(), other, this.known.writtenAt(), "", null);
		assertThat(compare(changed, this.known).faults()).as("in the copy")
			.singleElement()
			.asString()
			.contains("is not that of the line which stands there now")
			.doesNotContain("lost");
		Anchor later = new Anchor(this.lost.line(), this.lost.digest(), Instant.now().plusSeconds(60), "", null);
		assertThat(compare(later, this.known).faults()).as("after the start").hasSize(1);
		Anchor timeless = new Anchor(this.lost.line(), this.lost.digest(), null, "", null);
		assertThat(compare(timeless, this.known).faults()).as("no time")
			.singleElement()
			.asString()
			.contains("its line was lost then", "write \"seen\" behind it");
		Anchor dated = new Anchor(this.lost.line(), this.lost.shortDigest(), null, "", this.lost.writtenAt());
		assertThat(compare(dated, this.known).agrees()).isTrue();
		assertThat(compare(this.lost).agrees()).as("nothing fits").isFalse();
	}

	@Test
	void aCardOfAnotherDayIsNeverTaken() {
		MarkSubmission.SubmitCard card = of(this.third).findFirst().orElseThrow();
		ReturnedCard truth = returnedAt(card);
		ServiceLife now = this.service.getBean(ServiceLives.class).current();
		for (ReturnedCard wrong : List.of(new ReturnedCard(UUID.randomUUID(), truth.receivedAt()),
				new ReturnedCard(now.id(), truth.receivedAt()),
				new ReturnedCard(this.before.id(), this.before.beganAt().minus(Duration.ofHours(2))),
				new ReturnedCard(this.before.id(), now.beganAt().plus(Duration.ofHours(2))))) {
			expectRefused("card-of-another-day", card, wrong);
		}
		expectRefused("performance-not-open", card, null);
	}

	@Test
	void twoCardsOfOneNumberAreTheJudgesChoice() {
		MarkSubmission.SubmitCard card = of(this.third).skip(2).findFirst().orElseThrow();
		takeBack(card);
		MarkSubmission.SubmitCard other = other(card, 1);
		assertThat(expectRefused("card-sequence-taken", other, returnedAt(card)).received()).isNotNull();
		expectRefused("card-content-differs",
				new MarkSubmission.SubmitCard(card.id(), card.performance(), 1, new CardMarks(10, 10)),
				returnedAt(card));
	}

	@Test
	void gradesComeBackToTheListThatIsThere() {
		List<PointsSubmission.SubmitPointsCard> cards = this.points.sent();
		assertThat(this.points.takeBack(this.service, cards.get(0), this.before))
			.isEqualTo(this.points.acknowledged(cards.get(0)));
		assertThat(this.points.takeBack(this.service, cards.get(0), this.before))
			.isEqualTo(this.points.acknowledged(cards.get(0)));
		assertThatExceptionOfType(RuleViolationException.class).as("its list was lost")
			.isThrownBy(() -> this.points.takeBack(this.service, cards.get(1), this.before))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo("list-unknown"));
		new CalledElements(this.service, this.points.performance()).insert("AC2");
		assertThatExceptionOfType(RimebookException.class).as("called again, an element is another one")
			.isThrownBy(() -> this.points.takeBack(this.service, cards.get(1), this.before));
		assertThat(query("select count(*) from points_card")).isOne();
		assertThat(returned(this.points.performance())).isOne();
	}

	@Test
	void aStrangerBringsNothingBack() throws Exception {
		MarkSubmission.SubmitCard card = of(this.third).findFirst().orElseThrow();
		ReturnedCard returned = returnedAt(card);
		String body = """
				{"performance":"%s","sequence":1,"first":3.0,"second":3.0,
				"returned":{"life":"%s","receivedAt":"%s"}}""".formatted(card.performance(), returned.life(),
				returned.receivedAt());
		HttpResponse<String> answer = tell("PUT", "/api/cards/" + card.id(), body);
		assertThat(answer.statusCode()).isEqualTo(401);
	}

	/**
	 * Its cards may wait there for a year, and the same competition be restored at that
	 * address.
	 */
	@Test
	void whatATabletPutDownForAnotherServiceIsRefused() throws Exception {
		this.service.getBean(Panels.class).issueCodes(this.day.event().id(), SmallCompetition.REFEREE);
		String code = this.day.seats().get(0).code();
		String paired = tell("POST", "/api/seat-pairings", "{\"code\":\"" + code + "\"}").body();
		String token = "Bearer " + paired.replaceAll(".*\"token\":\"([^\"]+)\".*", "$1");
		String body = "{\"performance\":\"%s\",\"sequence\":1,\"first\":3.0,\"second\":3.0}".formatted(this.third.id());
		long rows = rows(this.third);
		String path = "/api/cards/" + UUID.randomUUID();
		assertThat(
				tell("PUT", path, body, "Authorization", token, "Rimebook-Life", UUID.randomUUID().toString()).body())
			.contains("card-of-another-day");
		ServiceLife now = this.service.getBean(ServiceLives.class).current();
		for (ServiceLife own : List.of(now, this.before)) {
			assertThat(tell("PUT", path, body, "Authorization", token, "Rimebook-Life", own.id().toString()).body())
				.contains("performance-not-open");
		}
		assertThat(tell("PUT", path, body, "Authorization", token).body()).contains("performance-not-open");
		assertThat(rows(this.third)).isEqualTo(rows);
	}

	private HttpResponse<String> tell(String method, String path, String body, String... headers) throws Exception {
		HttpRequest.Builder request = HttpRequest
			.newBuilder(URI
				.create("http://localhost:" + this.service.getEnvironment().getProperty("local.server.port") + path))
			.header("Content-Type", "application/json")
			.method(method, HttpRequest.BodyPublishers.ofString(body));
		if (headers.length > 0) {
			request.headers(headers);
		}
		return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
	}

	private Anchor head() {
		return this.service.getBean(RecordAnchors.class).head().orElseThrow();
	}

	private AnchorCheck.Finding compare(Anchor... anchors) {
		return this.service.getBean(RecordVerification.class).compare(List.of(anchors));
	}

	private PerformanceView callAndClose(int mark) {
		PerformanceView performance = this.day.callNext(1);
		List.of(0, 1, 2).forEach((seat) -> send(performance, seat, mark + 10 * seat));
		this.day.close(performance);
		return performance;
	}

	private void send(PerformanceView performance, int seat, int mark) {
		SeatView sender = this.day.seats().get(seat);
		MarkSubmission.SubmitCard card = new MarkSubmission.SubmitCard(UUID.randomUUID(), performance.id(), 1,
				new CardMarks(mark, mark));
		this.acknowledged.put(card, this.day.send(card, sender));
		this.senders.put(card, sender);
	}

	/** Those of one performance, by seat. */
	final Stream<MarkSubmission.SubmitCard> of(PerformanceView performance) {
		return this.acknowledged.keySet()
			.stream()
			.filter((card) -> card.performance().equals(performance.id()))
			.sorted((one, other) -> Integer.compare(one.marks().first(), other.marks().first()));
	}

	private MarkSubmission.SubmitCard other(MarkSubmission.SubmitCard card, int sequence) {
		MarkSubmission.SubmitCard other = new MarkSubmission.SubmitCard(UUID.randomUUID(), card.performance(), sequence,
				new CardMarks(10, 10));
		this.senders.put(other, this.senders.get(card));
		return other;
	}

	private ReturnedCard returnedAt(MarkSubmission.SubmitCard card) {
		return new ReturnedCard(this.before.id(), this.acknowledged.get(card).receivedAt());
	}

	private CardBook.Acknowledgement takeBack(MarkSubmission.SubmitCard card) {
		return takeBack(card, returnedAt(card));
	}

	private CardBook.Acknowledgement takeBack(MarkSubmission.SubmitCard card, ReturnedCard returned) {
		SeatView sender = this.senders.getOrDefault(card, this.day.seats().get(2));
		MarkSubmission submission = this.service.getBean(MarkSubmission.class);
		Actor judge = new Actor(sender.label(), "judge", "test");
		return (returned != null) ? submission.takeBack(card, returned, sender.id(), judge)
				: submission.submit(card, sender.id(), judge);
	}

	private ConflictException expectRefused(String code, MarkSubmission.SubmitCard card, ReturnedCard returned) {
		long rows = rows(card.performance().toString());
		ConflictException[] refusal = new ConflictException[1];
		assertThatExceptionOfType(ConflictException.class).isThrownBy(() -> takeBack(card, returned))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo(code))
			.satisfies((refused) -> refusal[0] = refused);
		assertThat(rows(card.performance().toString())).isEqualTo(rows);
		return refusal[0];
	}

	/** What else was lost of a performance and is to be done again. */
	final List<String> openOf(PerformanceView performance) {
		return this.service.getBean(LostActs.class)
			.all()
			.stream()
			.filter((act) -> act.isOpen() && act.line().subjectId().equals(performance.id().toString()))
			.map((act) -> act.line().action())
			.toList();
	}

	final String alarm() {
		return this.service.getBean(ReturnAlarm.class)
			.alarms()
			.map(Alarm::what)
			.map(Sentence::english)
			.findFirst()
			.orElse("");
	}

	final String alarmAtFirst() {
		return this.alarmAtFirst;
	}

	final ConfigurableApplicationContext service() {
		return this.service;
	}

	final PerformanceView third() {
		return this.third;
	}

	private long rows(PerformanceView performance) {
		return rows(performance.id().toString());
	}

	private long rows(String performance) {
		return query("select count(*) from card_submission where cast(performance_id as varchar(40)) = ?", performance);
	}

	private long returned(PerformanceView performance) {
		return query("""
				select count(*) from record_line where action = 'card.returned' and reason like 'first received at %'
				and subject_id = ?""", performance.id().toString());
	}

	final long query(String query, Object... values) {
		return this.service.getBean(JdbcClient.class).sql(query).params(values).query(Long.class).single();
	}

	/** A segment in points judging at the same rink; one judge sends two cards. */
	private record PointsDay(PerformanceView performance, SeatView seat, CalledListView list,
			Map<PointsSubmission.SubmitPointsCard, CardBook.Acknowledgement> answers) {

		static PointsDay begin(ConfigurableApplicationContext service) {
			SmallCompetition day = PointsCompetition.running(service, 3, 3);
			day.open(1);
			PerformanceView performance = day.callNext(1);
			new CalledElements(service, performance).call("I4+pi3", "ME4", "TwE3");
			return new PointsDay(performance, day.seats().get(0), listNow(service, performance), new LinkedHashMap<>());
		}

		PointsSubmission.SubmitPointsCard toFirstList() {
			return card(1, this.list);
		}

		PointsSubmission.SubmitPointsCard toSecondList(ConfigurableApplicationContext service) {
			return card(2, listNow(service, this.performance));
		}

		void send(ConfigurableApplicationContext service, PointsSubmission.SubmitPointsCard card) {
			this.answers.put(card, service.getBean(PointsSubmission.class).submit(card, this.seat.id(), judge()));
		}

		List<PointsSubmission.SubmitPointsCard> sent() {
			return List.copyOf(this.answers.keySet());
		}

		CardBook.Acknowledgement acknowledged(PointsSubmission.SubmitPointsCard card) {
			return this.answers.get(card);
		}

		CardBook.Acknowledgement takeBack(ConfigurableApplicationContext service,
				PointsSubmission.SubmitPointsCard card, ServiceLife before) {
			return service.getBean(PointsSubmission.class)
				.takeBack(card, new ReturnedCard(before.id(), acknowledged(card).receivedAt()), this.seat.id(),
						judge());
		}

		private Actor judge() {
			return new Actor(this.seat.label(), "judge", "test");
		}

		private PointsSubmission.SubmitPointsCard card(int sequence, CalledListView list) {
			Map<UUID, Integer> grades = new LinkedHashMap<>();
			list.counting().forEach((element) -> grades.put(element.id(), sequence));
			Map<String, Integer> components = new LinkedHashMap<>();
			List.of("Composition", "Presentation", "Skating Skills").forEach((name) -> components.put(name, 700));
			return new PointsSubmission.SubmitPointsCard(UUID.randomUUID(), this.performance.id(), sequence,
					new PointsMarks(grades, components), list.sequence());
		}

		private static CalledListView listNow(ConfigurableApplicationContext service, PerformanceView performance) {
			return service.getBean(ElementCalls.class).ofPerformance(performance.id()).orElseThrow();
		}

	}

	private static ConfigurableApplicationContext laptop(List<String> settings) {
		return new SpringApplicationBuilder(RimebookApplication.class).properties("server.port=0")
			.run(settings.stream().map("--"::concat).toArray(String[]::new));
	}

}
