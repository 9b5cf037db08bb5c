package rimebook;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.UUID;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatKind;
import rimebook.paper.PaperKeying;
import rimebook.performances.PerformanceView;
import rimebook.placement.MarkLine;
import rimebook.placement.MarksAmendment;
import rimebook.points.CalledListView;
import rimebook.points.ElementCalls;
import rimebook.points.ListAuthorisations;
import rimebook.points.PointsJudge;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.results.ResultPublication;
import rimebook.results.Signatories;
import rimebook.results.SignatureChecklist;
import rimebook.results.SignatureChecklist.SignatureCondition.State;
import rimebook.results.Standings;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.points.JudgedElement;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.testsupport.SmallCompetition.ACCOUNTANT;
import static rimebook.testsupport.SmallCompetition.REFEREE;

/** What the check list shows as missing is just what a signature is refused for. */
@WholeApplication
class SignatureChecklistIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private SignatureChecklist checklist;

	@Autowired
	private ResultPublication publication;

	@Autowired
	private Standings standings;

	@Autowired
	private JdbcClient database;

	private SmallCompetition day;

	@Test
	void aSegmentThatIsNotOpenHasNoList() {
		this.day = SmallCompetition.running(this.context, 2, 3);
		assertThat(this.checklist.of(this.day.segment(1))).isEmpty();
	}

	@Test
	void teamsToSkateHoldItBack() {
		running();
		this.day.skateNext(1);
		postedUnseen();
		assertHeldBack("performances", "1 of 2 teams is still to skate.");
		this.day.skateNext(1);
		assertSigned("performances");
	}

	@Test
	void anOpenCardHoldsItBack() {
		running();
		this.day.skateNext(1);
		PerformanceView last = this.day.callNext(1);
		postedUnseen();
		assertThat(condition("performances").state()).isEqualTo(State.MET);
		assertHeldBack("cards", "The cards of No. 2 are open; the referee closes them at the stand.");
		this.day.sendAll(last);
		this.day.close(last);
		assertSigned("cards");
	}

	@Test
	void aPaperCardThatWaitsHoldsItBack() {
		running();
		this.day.skateNext(1);
		PerformanceView last = this.day.callNext(1);
		this.day.sendAll(last);
		this.context.getBean(PaperKeying.class)
			.key(last.id(), this.day.seats().get(0).id(), MarkLine.card(new CardMarks(100, 100)), ACCOUNTANT);
		postedUnseen();
		assertThat(condition("keyings")).satisfies((keyings) -> {
			assertThat(keyings.state()).isEqualTo(State.MISSING);
			assertThat(keyings.sentence()).hasToString("No. 2: Judge 1 keyed otherwise than the tablet sent it.");
			assertThat(keyings.path()).isEqualTo("/desk/keying/" + segment());
		});
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> sign(Signatories.Signatory.REFEREE));
	}

	@Test
	void anUnauthorisedListHoldsItBack() {
		this.day = PointsCompetition.running(this.context, 1, 3);
		this.day.open(1);
		PerformanceView performance = this.day.callNext(1);
		CalledListView list = this.context.getBean(ElementCalls.class)
			.call(new ElementCalls.CallElements(performance.id(), 1,
					List.of(new ElementCalls.CallElements.Call(null, "ME4", JudgedElement.ElementWorth.COUNTS, null))),
					ACCOUNTANT);
		this.day.seats().forEach((seat) -> PointsJudge.send(this.context, performance, seat, list, 2));
		this.context.getBean(ListAuthorisations.class).authorise(performance.id(), list.sequence(), REFEREE);
		this.day.close(performance);
		post();
		assertThat(condition("lists").state()).isEqualTo(State.MET);
		this.database
			.sql("insert into called_list (id, performance_id, sequence, elements, origin, called_by, "
					+ "received_at) select ?, performance_id, 2, elements, origin, called_by, received_at "
					+ "from called_list where performance_id = ?")
			.params(UUID.randomUUID(), performance.id().value())
			.update();
		assertHeldBack("lists", "The called elements of No. 1 are not authorised by the technical controller.");
	}

	@Test
	void placementHasNoListToAuthorise() {
		running();
		assertThat(this.checklist.of(segment())).extracting(SignatureChecklist.SignatureCondition::key)
			.containsExactly("performances", "cards", "keyings", "corrections", "protests", "protest-time", "seats",
					"posted", "referee", "accountant");
	}

	@Test
	void anUndecidedCorrectionHoldsItBack() {
		skatedAndPosted();
		Corrections corrections = this.context.getBean(Corrections.class);
		CorrectionView proposed = corrections
			.propose(new Corrections.ProposeCorrection(MarksAmendment.on(this.day.performances(1).get(0).id(),
					this.day.seats().get(0).id(), new CardMarks(100, 100)), "Typed one key off."), ACCOUNTANT);
		assertHeldBack("corrections", "A correction is not decided yet; the result can be signed afterwards.");
		corrections.reject(proposed.id(), proposed.version(), "The paper says otherwise.", REFEREE);
		assertSigned("corrections");
	}

	@Test
	void anUndecidedProtestHoldsItBack() {
		skatedAndPosted();
		Protests protests = this.context.getBean(Protests.class);
		ProtestView filed = protests
			.file(new Protests.FileProtest(segment(), new ProtestView.Claim(this.day.entries().get(0).id(),
					ProtestView.ProtestCategory.CALCULATION, "A sum is wrong.", 0), "Mira Sund", null), ACCOUNTANT);
		assertHeldBack("protests", "A protest is not decided yet; the result can be signed afterwards.");
		protests.decide(filed.id(), filed.version(), false, "It is right.", REFEREE);
		assertSigned("protests");
	}

	@Test
	void theTimeForProtestsIsShownAndHoldsNothingBack() {
		skatedAndPosted();
		assertThat(condition("protest-time")).satisfies((time) -> {
			assertThat(time.state()).isEqualTo(State.DUE);
			assertThat(time.sentence()).asString().startsWith("Protests are heard until ");
		});
		Instant earlier = Instant.now().minusSeconds(1801);
		this.database.sql("insert into result_posting values (?, ?, 99, ?, 'Bo Tally', '', ?, ?)")
			.params(UUID.randomUUID(), segment().value(), earlier.atOffset(ZoneOffset.UTC),
					earlier.plusSeconds(1800).atOffset(ZoneOffset.UTC),
					earlier.plusSeconds(86400).atOffset(ZoneOffset.UTC))
			.update();
		assertThat(condition("protest-time").state()).isEqualTo(State.MET);
		assertSigned("protest-time");
	}

	@Test
	void nothingIsSignedBeforeItIsPosted() {
		running();
		this.day.skateRest(1);
		assertThat(condition("posted").state()).isEqualTo(State.MISSING);
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> sign(Signatories.Signatory.REFEREE))
			.withMessageContaining("cannot be signed");
		post();
		assertSigned("posted");
	}

	@Test
	void bothSignaturesAreDueUntilTheyAreGiven() {
		skatedAndPosted();
		assertThat(condition("referee").state()).isEqualTo(State.DUE);
		sign(Signatories.Signatory.REFEREE);
		assertThat(condition("referee").sentence()).asString().startsWith("Signed by " + REFEREE.name());
		assertThat(condition("accountant").state()).isEqualTo(State.DUE);
		sign(Signatories.Signatory.ACCOUNTANT);
		assertThat(condition("accountant").state()).isEqualTo(State.MET);
	}

	@Test
	void onlyThoseWhoHaveTheSeatsSign() {
		skatedAndPosted();
		Actor other = new Actor("person:other", "Ada Second", "referee", "test");
		for (Signatories.Signatory signatory : Signatories.Signatory.values()) {
			String seated = (signatory == Signatories.Signatory.REFEREE) ? REFEREE.name() : ACCOUNTANT.name();
			assertThatExceptionOfType(RimebookException.class)
				.isThrownBy(() -> this.publication.sign(segment(), version(), signatory, other))
				.withMessageStartingWith(seated + " signs as " + signatory.name().toLowerCase(Locale.ROOT)
						+ " in Junior, having that seat; you are Ada Second.")
				.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo("signature-not-seated"));
		}
		assertThat(condition("seats").sentence()).asString()
			.startsWith(REFEREE.name() + " signs as referee and " + ACCOUNTANT.name()
					+ " as accountant: they have these seats in Junior.");
		this.day.seatInstead(SeatKind.REFEREE, "Ada Second");
		this.publication.sign(segment(), version(), Signatories.Signatory.REFEREE, other);
		sign(Signatories.Signatory.ACCOUNTANT);
		assertThat(condition("accountant").state()).isEqualTo(State.MET);
	}

	@Test
	void anEmptySeatHoldsItBack() {
		skatedAndPosted();
		this.day.vacate(SeatKind.ACCOUNTANT);
		assertHeldBack("seats", "Nobody sits as accountant in Junior, and a result is signed by those who do. "
				+ "The seat is given on the page of the panel.");
		assertThat(condition("seats").path()).isEqualTo("/desk/panel/" + this.day.event().id());
		this.day.seatInstead(SeatKind.ACCOUNTANT, ACCOUNTANT.name());
		sign(Signatories.Signatory.REFEREE);
	}

	/** As a panel may be that was made before the two seats excluded each other. */
	@Test
	void onePersonInBothSeatsHoldsItBack() {
		skatedAndPosted();
		String both = "(select official_id from seat where event_id = ? and kind = 'REFEREE')";
		UUID event = this.day.event().id().value();
		this.context.getBean(JdbcTemplate.class)
			.update("update seat set official_id = " + both + " where event_id = ? and kind = 'ACCOUNTANT'", event,
					event);
		assertHeldBack("seats", REFEREE.name() + " sits as referee and as accountant in Junior, and two people sign. "
				+ "One of the seats is given to somebody else on the page of the panel.");
	}

	@Test
	void theListSaysWhetherThoseWhoSignHaveAnAccount() {
		skatedAndPosted();
		assertThat(condition("seats").state()).isEqualTo(State.DUE);
		assertThat(condition("seats").sentence()).asString()
			.endsWith("No account goes by the name Runa Hale or Bo Tally yet; it has to be that of the register.");
		this.day.seatInstead(SeatKind.REFEREE, Crew.displayName(Crew.add(this.context, Role.REFEREE)));
		this.day.seatInstead(SeatKind.ACCOUNTANT, Crew.displayName(Crew.add(this.context, Role.ACCOUNTANT)));
		assertThat(condition("seats").state()).isEqualTo(State.MET);
	}

	/** The page follows, and offers only doors that are open to whoever looks. */
	@Test
	void thePageFollowsByItself() {
		running();
		this.day.skateNext(1);
		Visitor accountant = Crew.visitor(this.context, Role.ACCOUNTANT);
		Visitor.Page page = accountant.open("/desk/results/" + segment());
		assertThat(page.document().select(".check-lines li").get(0).text()).contains("missing",
				"1 of 2 teams is still to skate.");
		assertThat(page.document().select(".check-lines a[href^=/desk/stand]")).isEmpty();
		assertThat(Crew.visitor(this.context, Role.REFEREE)
			.open("/desk/results/" + segment())
			.document()
			.select(".check-lines a[href^=/desk/stand]")).isNotEmpty();
		String live = page.document().select("#checks").attr("hx-get");
		assertThat(accountant.json("GET", live, "").statusCode()).isEqualTo(204);
		PerformanceView called = this.day.callNext(1);
		assertThat(accountant.json("GET", live, "").body()).as("a mere call changes no result")
			.doesNotContain("The result has changed since this page was opened.");
		this.day.sendAll(called);
		this.day.close(called);
		assertThat(accountant.json("GET", live, "").body()).contains("All 2 performances are done.",
				"The result has changed since this page was opened.");
	}

	private void running() {
		this.day = SmallCompetition.running(this.context, 2, 3);
		this.day.open(1);
	}

	private void skatedAndPosted() {
		running();
		this.day.skateRest(1);
		post();
	}

	private void post() {
		this.publication.post(segment(), version(), ACCOUNTANT);
	}

	/** Post behind the back of the rule that everybody has to have skated. */
	private void postedUnseen() {
		this.database.sql("update segment_result set state = 'POSTED', posted_at = ? where segment_id = ?")
			.params(Instant.now().atOffset(ZoneOffset.UTC), segment().value())
			.update();
	}

	private void assertHeldBack(String key, String sentence) {
		assertThat(condition(key).state()).isEqualTo(State.MISSING);
		assertThat(condition(key).sentence()).hasToString(sentence);
		for (Signatories.Signatory signatory : Signatories.Signatory.values()) {
			assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> sign(signatory))
				.withMessage(sentence)
				.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo("signature-held-back"));
		}
	}

	private void assertSigned(String key) {
		assertThat(condition(key).state()).isEqualTo(State.MET);
		assertThat(this.checklist.of(segment())).noneMatch(SignatureChecklist.SignatureCondition::holdsBack);
		sign(Signatories.Signatory.REFEREE);
	}

	private void sign(Signatories.Signatory signatory) {
		this.publication.sign(segment(), version(), signatory,
				(signatory == Signatories.Signatory.REFEREE) ? REFEREE : ACCOUNTANT);
	}

	private SignatureChecklist.SignatureCondition condition(String key) {
		return this.checklist.of(segment())
			.stream()
			.filter((condition) -> condition.key().equals(key))
			.findFirst()
			.orElseThrow();
	}

	private SegmentId segment() {
		return this.day.segment(1);
	}

	private int version() {
		return this.standings.result(segment()).orElseThrow().version();
	}

}
