package rimebook.tablets;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.security.test.context.support.WithMockUser;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

import rimebook.accounts.SeatCodes;
import rimebook.competition.JudgingMethod;
import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.performances.CardBook;
import rimebook.performances.PerformanceId;
import rimebook.placement.MarkSubmission;
import rimebook.points.PointsTasks;
import rimebook.remarks.RemarkReceipts;
import rimebook.remarks.Remarks;
import rimebook.shared.ConflictException;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.SegmentKind;
import rimebook.web.PageTest;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.argThat;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;

@PageTest(JudgeApiController.class)
class JudgeApiTests {

	private static final UUID SEAT = UUID.fromString("01a20000-0000-7000-8000-000000000003");

	private static final PerformanceId PERFORMANCE = PerformanceId.of("01a20000-0000-7000-8000-0000000000aa");

	private static final UUID CARD = UUID.fromString("9f1c7a51-1a0e-4c5b-8d1f-0123456789ab");

	private static final UUID REMARK = UUID.fromString("01a20000-0000-7000-8000-0000000000bb");

	private static final Instant RECEIVED = Instant.parse("2027-02-13T12:02:11.120Z");

	@Autowired
	private MockMvcTester mvc;

	@MockitoBean
	private SeatCodes seats;

	@MockitoBean
	private JudgeTables tables;

	@MockitoBean
	private MarkSubmission submission;

	@MockitoBean
	private RemarkReceipts remarks;

	@MockitoBean
	private Panels panels;

	@MockitoBean
	private TabletAnchors anchors;

	@BeforeEach
	void oneTabletIsPaired() {
		given(this.seats.grantOf(any())).willReturn(Optional.empty());
		given(this.seats.grantOf("a-token")).willReturn(Optional.of(new SeatCodes.Grant(SEAT, "Judge 3, Junior")));
		given(this.submission.submit(any(), any(), any())).willReturn(new CardBook.Acknowledgement(CARD, 1, RECEIVED));
	}

	@Test
	void tableShowsMarksWithOneDecimal() {
		JudgeTable.Now now = new JudgeTable.Now(PERFORMANCE, 4, "Northern Lanterns", "Lantern Club", List
			.of(new RemarkReceipts.ToSeat(
					new Remarks.RemarkView(REMARK, Remarks.RemarkKind.FALL, "one skater", "Runa Hale", RECEIVED, null),
					true)));
		JudgeTable.OwnCard own = new JudgeTable.OwnCard(PERFORMANCE, 4, "Northern Lanterns",
				new JudgeTable.OwnCard.Version(560, 500, 2, RECEIVED), false);
		given(this.tables.tableOf(new SeatId(SEAT))).willReturn(new JudgeTable(
				new JudgeTable.Heading("Judge 3", "Junior", "Free skating", SegmentKind.FREE,
						PlacementRules.CardTieBreak.SECOND_MARK),
				new JudgeTable.Course(now, List.of(own), 3, 12),
				new JudgeTable.Marking(JudgingMethod.MAJORITY, null, null),
				new JudgeTable.Decided(null, PlacementRules.ZeroMark.COUNT, List.of(), List.of())));
		assertThat(this.mvc.get().uri("/api/judge/table").header("Authorization", "Bearer a-token")).hasStatusOk()
			.hasHeader("Cache-Control", "no-store")
			.bodyJson()
			.isStrictlyEqualTo(
					"""
							{"seat":"Judge 3","event":"Junior","segment":"Free skating","kind":"FREE",
							"secondLook":"SECOND_MARK","now":{"performance":"01a20000-0000-7000-8000-0000000000aa",
							"startNumber":4,"team":"Northern Lanterns","club":"Lantern Club","remarks":[{
							"id":"01a20000-0000-7000-8000-0000000000bb","kind":"FALL","text":"one skater",
							"notedAt":"2027-02-13T12:02:11.120Z","seen":true}]},
							"cards":[{"performance":"01a20000-0000-7000-8000-0000000000aa","startNumber":4,
							"team":"Northern Lanterns","first":5.6,"second":5.0,"sequence":2,
							"receivedAt":"2027-02-13T12:02:11.120Z","closed":false}],"skated":3,"starters":12,"method":"MAJORITY","points":null,"reopened":null,"panel":null,"zeroMark":"COUNT","ended":[],
							"corrected":[]}""");
	}

	@Test
	void cardsOpenedAgainHaveTheMembersOfThoseOnTheIceAndTheirOwnPoints() {
		JudgeTable.Now again = new JudgeTable.Now(PERFORMANCE, 3, "Northern Lanterns", "Lantern Club", List.of());
		PointsTasks.PointsTask task = new PointsTasks.PointsTask(
				new PointsTasks.PointsTask.Called(2, List.of(), List.of(), false), List.of("Composition"), 5, null);
		given(this.tables.tableOf(new SeatId(SEAT))).willReturn(new JudgeTable(
				new JudgeTable.Heading("Judge 3", "Junior", "Free skating", SegmentKind.FREE,
						PlacementRules.CardTieBreak.SECOND_MARK),
				new JudgeTable.Course(null, List.of(), 2, 12),
				new JudgeTable.Marking(JudgingMethod.POINTS, null, new JudgeTable.Reopened(again, task)),
				new JudgeTable.Decided(null, PlacementRules.ZeroMark.COUNT, List.of(), List.of())));
		MvcTestResult answer = this.mvc.get()
			.uri("/api/judge/table")
			.header("Authorization", "Bearer a-token")
			.exchange();
		assertThat(answer).bodyJson()
			.extractingPath("$.reopened")
			.asMap()
			.containsOnlyKeys("performance", "startNumber", "team", "club", "remarks", "points")
			.containsEntry("startNumber", 3);
		assertThat(answer).bodyJson().extractingPath("$.reopened.points.listSequence").isEqualTo(2);
	}

	@Test
	void tabletSaysHowManyCardsWaitOnIt() {
		given(this.tables.tableOf(any())).willReturn(new JudgeTable(
				new JudgeTable.Heading("Judge 3", "Junior", "", null, PlacementRules.CardTieBreak.SECOND_MARK),
				new JudgeTable.Course(null, List.of(), 0, 0),
				new JudgeTable.Marking(JudgingMethod.MAJORITY, null, null),
				new JudgeTable.Decided(null, PlacementRules.ZeroMark.COUNT, List.of(), List.of())));
		assertThat(this.mvc.get().uri("/api/judge/table?waiting=2").header("Authorization", "Bearer a-token"))
			.hasStatusOk();
		then(this.panels).should().noteTablet(new SeatId(SEAT), 2, false);
	}

	@Test
	void remarkIsSeenByTheSeatOfTheTablet() {
		given(this.remarks.see(any(), any(), any())).willReturn(new RemarkReceipts.Receipt(REMARK, RECEIVED));
		assertThat(this.mvc.put()
			.uri("/api/judge/remarks/" + REMARK + "/seen")
			.header("Authorization", "Bearer a-token")
			.contentType(MediaType.APPLICATION_JSON)).hasStatusOk().bodyJson().isStrictlyEqualTo("""
					{"id":"01a20000-0000-7000-8000-0000000000bb","seenAt":"2027-02-13T12:02:11.120Z"}""");
		then(this.remarks).should()
			.see(eq(REMARK), eq(new SeatId(SEAT)), argThat((actor) -> actor.name().equals("Judge 3, Junior")));
	}

	@Test
	void cardIsTakenForTheSeatOfTheTabletAndAcknowledged() {
		assertThat(put("{\"performance\":\"" + PERFORMANCE + "\",\"sequence\":1,\"first\":5.6,\"second\":6}"))
			.hasStatusOk()
			.bodyJson()
			.isStrictlyEqualTo("""
					{"id":"9f1c7a51-1a0e-4c5b-8d1f-0123456789ab","sequence":1,
					"receivedAt":"2027-02-13T12:02:11.120Z"}""");
		then(this.submission).should()
			.submit(eq(new MarkSubmission.SubmitCard(CARD, PERFORMANCE, 1, new CardMarks(560, 600))),
					eq(new SeatId(SEAT)),
					argThat((actor) -> actor.name().equals("Judge 3, Junior") && actor.role().equals("judge")));
	}

	@ParameterizedTest(name = "{0} = {1}")
	@CsvSource({ "first, 5.65", "first, 6.1", "first, -0.1", "second, 60", "second, 1e999999999", "second, 0.01" })
	void markOutOfFormIsNamed(String field, String mark) {
		String card = "{\"performance\":\"" + PERFORMANCE + "\",\"sequence\":1,\"first\":5.6,\"second\":5.6,\"" + field
				+ "\":" + mark + "}";
		assertRefused(put(card), HttpStatus.UNPROCESSABLE_CONTENT, field);
		then(this.submission).shouldHaveNoInteractions();
	}

	@ParameterizedTest
	@CsvSource({ "performance", "sequence", "first", "second" })
	void missingFieldIsNamed(String field) {
		String card = "{\"performance\":\"" + PERFORMANCE + "\",\"sequence\":1,\"first\":5.6,\"second\":5.6}";
		String without = card.replaceFirst("\"" + field + "\":[^,}]*,?", "").replace(",}", "}");
		assertThat(without).doesNotContain(field);
		assertRefused(put(without), HttpStatus.UNPROCESSABLE_CONTENT, field);
		then(this.submission).shouldHaveNoInteractions();
	}

	@ParameterizedTest(name = "{0} = {1}")
	@CsvSource({ "first, '\"high\"'", "performance, '\"4\"'", "sequence, '\"one\"'", "second, '[5.6]'" })
	void fieldThatCannotBeReadIsNamed(String field, String value) {
		String card = "{\"performance\":\"" + PERFORMANCE + "\",\"sequence\":1,\"first\":5.6,\"second\":5.6,\"" + field
				+ "\":" + value + "}";
		assertRefused(put(card), HttpStatus.BAD_REQUEST, field);
		then(this.submission).shouldHaveNoInteractions();
	}

	@ParameterizedTest
	@CsvSource({ "1.5", "123456" })
	void sequenceIsAWholeNumber(String sequence) {
		assertRefused(put(
				"{\"performance\":\"" + PERFORMANCE + "\",\"sequence\":" + sequence + ",\"first\":5.6,\"second\":5.6}"),
				HttpStatus.UNPROCESSABLE_CONTENT, "sequence");
	}

	@Test
	void conflictKeepsItsCodeAndSentence() {
		given(this.submission.submit(any(), any(), any())).willThrow(new ConflictException("card-closed",
				Sentence.said("The referee has closed the cards of start number 4.")));
		MvcTestResult refused = put(
				"{\"performance\":\"" + PERFORMANCE + "\",\"sequence\":1,\"first\":5.6,\"second\":5.6}");
		assertThat(refused).hasStatus(HttpStatus.CONFLICT).hasContentType(MediaType.APPLICATION_PROBLEM_JSON);
		assertThat(refused).bodyJson().extractingPath("$.code").isEqualTo("card-closed");
		assertThat(refused).bodyJson()
			.extractingPath("$.detail")
			.isEqualTo("The referee has closed the cards of start number 4.");
	}

	@Test
	void conflictWithAnotherVersionShowsIt() {
		given(this.submission.submit(any(), any(), any()))
			.willThrow(ConflictException.instead("card-sequence-taken", Sentence.said("A card was received meanwhile."),
					new MarkSubmission.ReceivedCard(2, new BigDecimal("5.0"), new BigDecimal("5.1"), RECEIVED)));
		MvcTestResult refused = put(
				"{\"performance\":\"" + PERFORMANCE + "\",\"sequence\":1,\"first\":5.6,\"second\":5.6}");
		assertThat(refused).hasStatus(HttpStatus.CONFLICT).hasContentType(MediaType.APPLICATION_PROBLEM_JSON);
		assertThat(refused).bodyJson()
			.extractingPath("$.received")
			.asMap()
			.containsExactly(entry("sequence", 2), entry("first", 5.0), entry("second", 5.1),
					entry("receivedAt", "2027-02-13T12:02:11.120Z"));
	}

	@Test
	void otherConflictsShowNone() {
		given(this.submission.submit(any(), any(), any()))
			.willThrow(new ConflictException("card-closed", Sentence.said("The referee has closed the cards.")));
		assertThat(put("{\"performance\":\"" + PERFORMANCE + "\",\"sequence\":1,\"first\":5.6,\"second\":5.6}"))
			.bodyJson()
			.doesNotHavePath("$.received");
	}

	@Test
	void brokenJsonIsSaidToBeBroken() {
		assertThat(put("{\"first\":5.6")).hasStatus(HttpStatus.BAD_REQUEST)
			.bodyJson()
			.extractingPath("$.code")
			.isEqualTo("malformed-json");
	}

	@Test
	void identityOfACardIsAUuid() {
		MvcTestResult refused = this.mvc.put()
			.uri("/api/cards/17")
			.header("Authorization", "Bearer a-token")
			.contentType(MediaType.APPLICATION_JSON)
			.content("{}")
			.exchange();
		assertRefused(refused, HttpStatus.BAD_REQUEST, "id");
	}

	@Test
	void tabletWhoseSeatWasTakenIsShutOut() {
		assertThat(this.mvc.get().uri("/api/judge/table").header("Authorization", "Bearer an-older-token"))
			.hasStatus(HttpStatus.UNAUTHORIZED)
			.hasContentType(MediaType.APPLICATION_PROBLEM_JSON);
		then(this.tables).shouldHaveNoInteractions();
	}

	@Test
	@WithMockUser(roles = "REFEREE")
	void nobodyButATabletSeesOrSendsACard() {
		assertThat(this.mvc.get().uri("/api/judge/table")).hasStatus(HttpStatus.FORBIDDEN);
		assertThat(this.mvc.put().uri("/api/cards/" + CARD).contentType(MediaType.APPLICATION_JSON).content("{}"))
			.hasStatus(HttpStatus.FORBIDDEN);
		then(this.submission).shouldHaveNoInteractions();
	}

	private MvcTestResult put(String card) {
		return this.mvc.put()
			.uri("/api/cards/" + CARD)
			.header("Authorization", "Bearer a-token")
			.contentType(MediaType.APPLICATION_JSON)
			.content(card)
			.exchange();
	}

	private static void assertRefused(MvcTestResult refused, HttpStatus status, String field) {
		assertThat(refused).hasStatus(status).hasContentType(MediaType.APPLICATION_PROBLEM_JSON);
		assertThat(refused).bodyJson().extractingPath("$.errors[*].field").asArray().containsExactly(field);
		assertThat(refused).bodyJson().extractingPath("$.detail").asString().contains("'" + field + "'");
	}

}
