package rimebook.protests;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;

import rimebook.accounts.DraftPerson;
import rimebook.accounts.People;
import rimebook.accounts.PersonView;
import rimebook.accounts.Role;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.placement.MarksAmendment;
import rimebook.published.Standing;
import rimebook.results.ResultPreview;
import rimebook.results.ResultPublication;
import rimebook.results.ResultVersion;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.Crew;
import rimebook.testsupport.Races;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.tuple;
import static rimebook.testsupport.SmallCompetition.ACCOUNTANT;
import static rimebook.testsupport.SmallCompetition.REFEREE;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

@WholeApplication
class CorrectionsIntegrationTests {

	private final Races races = new Races();

	private static final CardMarks HIGH = new CardMarks(580, 580);

	private static final CardMarks LOW = new CardMarks(400, 400);

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JdbcTemplate jdbc;

	@Autowired
	private Corrections corrections;

	@Autowired
	private Protests protests;

	@Autowired
	private Standings standings;

	@Autowired
	private ResultPublication publication;

	@Test
	void approvalByAnotherPublishesACorrectedVersionWithBothNames() {
		SmallCompetition day = twoTeams();
		SegmentId segment = day.segment(1);
		PerformanceView loser = day.performances(1).get(1);
		String leader = leader(segment);
		CorrectionView proposed = propose(day, loser, 0);
		this.corrections.approve(propose(day, loser, 1).id(), 0, REFEREE);
		assertThat(leader(segment)).isEqualTo(leader);
		ResultPreview.ResultEffect effect = this.corrections.effect(proposed.id());
		assertThat(effect.changesPlaces()).isTrue();
		this.corrections.approve(proposed.id(), proposed.version(), REFEREE);
		ResultVersion version = this.standings.latest(segment).orElseThrow();
		assertThat(version.cause()).isEqualTo(ResultVersion.Cause.CORRECTED);
		assertThat(version.note()).contains("Typed one key off", ACCOUNTANT.name(), REFEREE.name(), "4.0 / 4.0",
				"5.8 / 5.8");
		assertThat(version.standing().rows()).extracting(Standing.Row::team, Standing.Row::place)
			.containsExactlyElementsOf(
					effect.segment().stream().map((move) -> tuple(move.team(), move.after())).toList());
		assertThat(leader(segment)).isNotEqualTo(leader);
	}

	@Test
	void previewWritesNothing() {
		SmallCompetition day = twoTeams();
		CorrectionView proposed = propose(day, day.performances(1).get(1), 0);
		int before = this.standings.latest(day.segment(1)).orElseThrow().number();
		this.corrections.effect(proposed.id());
		assertThat(this.standings.latest(day.segment(1)).orElseThrow().number()).isEqualTo(before);
	}

	@Test
	void oneNameIsNotEnough() {
		SmallCompetition day = twoTeams();
		CorrectionView proposed = propose(day, day.performances(1).get(1), 0);
		assertRefused("two-names-needed",
				() -> this.corrections.approve(proposed.id(), proposed.version(), ACCOUNTANT));
	}

	@Test
	void anotherNameOrAnotherRoleIsNotAnotherPerson() {
		SmallCompetition day = twoTeams();
		Actor kai = new Actor("person:kai", "Kai Berg", "accountant", "test");
		CorrectionView proposed = this.corrections.propose(new Corrections.ProposeCorrection(
				MarksAmendment.on(day.performances(1).get(1).id(), day.seats().get(0).id(), HIGH),
				"Typed one key off."), kai);
		assertRefused("two-names-needed", () -> this.corrections.approve(proposed.id(), proposed.version(),
				new Actor("person:kai", "Kai Lind", "accountant", "test")));
		assertRefused("two-names-needed", () -> this.corrections.reject(proposed.id(), proposed.version(), "No.",
				new Actor("person:kai", "Kai Berg", "referee", "elsewhere")));
		this.corrections.approve(proposed.id(), proposed.version(), REFEREE);
	}

	@Test
	void whoeverFiledAProtestDoesNotDecideItUnderAnotherName() {
		SmallCompetition day = twoTeams();
		Actor kai = new Actor("person:kai", "Kai Berg", "secretary", "test");
		ProtestView own = this.protests.file(new Protests.FileProtest(day.segment(1),
				new ProtestView.Claim(day.entries().get(0).id(), ProtestView.ProtestCategory.CONDUCT, "Too loud.", 0),
				"kai  BERG", null), kai);
		assertRefused("own-protest", () -> this.protests.decide(own.id(), own.version(), true, "Granted.",
				new Actor("person:kai", "Kai Lind", "referee", "test")));
		ProtestView typed = this.protests.file(new Protests.FileProtest(day.segment(1),
				new ProtestView.Claim(day.entries().get(0).id(), ProtestView.ProtestCategory.CONDUCT, "Too loud.", 0),
				"Kai Berg ", null), SECRETARY);
		assertRefused("own-protest", () -> this.protests.decide(typed.id(), typed.version(), true, "Granted.",
				new Actor("person:kai", "KAI Berg", "referee", "test")));
		this.protests.decide(typed.id(), typed.version(), false, "Heard.", REFEREE);
	}

	@Test
	void aFilerNamedBySomebodyElseIsKnownAfterARename() {
		SmallCompetition day = twoTeams();
		People people = this.context.getBean(People.class);
		String known = UUID.randomUUID().toString().substring(0, 8);
		PersonView filer = people
			.add(new DraftPerson("filer-" + known, "Filer " + known, Set.of(Role.REFEREE), Crew.PASSWORD), SECRETARY);
		ProtestView typed = this.protests.file(new Protests.FileProtest(day.segment(1),
				new ProtestView.Claim(day.entries().get(0).id(), ProtestView.ProtestCategory.CONDUCT, "Too loud.", 0),
				"filer  " + known, null), SECRETARY);
		people.change(filer.id(), filer.version(), "Renamed " + known, Set.of(Role.REFEREE), SECRETARY);
		Actor renamed = new Actor("person:" + filer.id().value(), "Renamed " + known, "referee", "test");
		assertRefused("own-protest",
				() -> this.protests.decide(typed.id(), typed.version(), true, "Granted.", renamed));
	}

	@Test
	void sameMarksAreNoCorrection() {
		SmallCompetition day = twoTeams();
		assertRefused("nothing-to-correct",
				() -> this.corrections.propose(new Corrections.ProposeCorrection(
						MarksAmendment.on(day.performances(1).get(1).id(), day.seats().get(0).id(), LOW), "why"),
						ACCOUNTANT));
	}

	@Test
	void correctionDecidedOnOldMarksIsRefused() {
		SmallCompetition day = twoTeams();
		PerformanceView loser = day.performances(1).get(1);
		CorrectionView first = propose(day, loser, 0);
		CorrectionView second = propose(day, loser, 0);
		this.corrections.approve(first.id(), first.version(), REFEREE);
		assertRefused("stale-version", () -> this.corrections.approve(second.id(), second.version(), REFEREE));
		assertThat(this.corrections.correction(second.id()).state()).isEqualTo(CorrectionView.State.PROPOSED);
	}

	@Test
	void turnedDownCorrectionChangesNothing() {
		SmallCompetition day = twoTeams();
		String leader = leader(day.segment(1));
		CorrectionView proposed = propose(day, day.performances(1).get(1), 0);
		this.corrections.reject(proposed.id(), proposed.version(), "The judge confirms the mark.", REFEREE);
		assertRefused("correction-decided",
				() -> this.corrections.approve(proposed.id(), proposed.version() + 1, REFEREE));
		assertThat(leader(day.segment(1))).isEqualTo(leader);
	}

	@Test
	void nothingIsSignedWhileSomethingIsUndecided() {
		SmallCompetition day = twoTeams();
		SegmentId segment = day.segment(1);
		this.publication.post(segment, version(segment), ACCOUNTANT);
		ProtestView protest = file(day, ProtestView.ProtestCategory.CALCULATION, null);
		assertRefused("signature-held-back",
				() -> this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE));
		this.protests.decide(protest.id(), protest.version(), false, "The sums are right.", REFEREE);
		this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE);
	}

	@Test
	void officialResultIsNotCorrected() {
		SmallCompetition day = twoTeams();
		SegmentId segment = day.segment(1);
		this.publication.post(segment, version(segment), ACCOUNTANT);
		this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE);
		this.publication.sign(segment, version(segment), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
		assertRefused("result-official", () -> propose(day, day.performances(1).get(1), 0));
	}

	@Test
	void correctionWipesASignatureThatDidNotCoverIt() {
		SmallCompetition day = twoTeams();
		SegmentId segment = day.segment(1);
		this.publication.post(segment, version(segment), ACCOUNTANT);
		this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE);
		CorrectionView proposed = propose(day, day.performances(1).get(1), 0);
		this.corrections.approve(proposed.id(), proposed.version(), REFEREE);
		assertThat(this.standings.result(segment).orElseThrow().signatures().referee().name()).isEmpty();
	}

	@Test
	void signatureAndApprovalRacingNeverLeaveASignedResultThatChanged() throws Exception {
		for (int round = 0; round < Races.ROUNDS; round++) {
			SmallCompetition day = twoTeams();
			SegmentId segment = day.segment(1);
			CorrectionView proposed = propose(day, day.performances(1).get(1), 0);
			this.corrections.reject(proposed.id(), proposed.version(), "Not yet.", REFEREE);
			this.publication.post(segment, version(segment), ACCOUNTANT);
			this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE);
			int seen = version(segment);
			Races.Ending ending = this.races
				.race(() -> this.publication.sign(segment, seen, Signatories.Signatory.ACCOUNTANT, ACCOUNTANT), () -> {
					CorrectionView next = propose(day, day.performances(1).get(1), 0);
					this.corrections.approve(next.id(), next.version(), REFEREE);
				});
			boolean signed = ending.first() == null;
			boolean corrected = ending.second() == null;
			assertThat(signed && corrected).isFalse();
			assertThat(this.standings.latest(segment).orElseThrow().cause())
				.isEqualTo(signed ? ResultVersion.Cause.SIGNED
						: (corrected ? ResultVersion.Cause.CORRECTED : ResultVersion.Cause.POSTED));
		}
	}

	@Test
	void lateProtestIsKeptAndRefusedWithTheRule() {
		SmallCompetition day = twoTeams();
		ProtestView opinion = file(day, ProtestView.ProtestCategory.EVALUATION, null);
		assertThat(opinion.state()).isEqualTo(ProtestView.State.REFUSED);
		assertThat(opinion.decision().grounds()).isEqualTo(Sentence.of("protests.unheard.evaluation"));
		assertThat(this.protests.ofSegment(day.segment(1))).singleElement()
			.satisfies((kept) -> assertThat(kept.decision().grounds()).isEqualTo(opinion.decision().grounds()));
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String page = "/desk/protests/" + day.segment(1);
		assertThat(referee.open(page).text()).contains("is not allowed (ISU General Regulations 2012, Rule 123");
		assertThat(referee.open(page + "/protest/" + opinion.id()).text())
			.contains("Rule 123 paragraph 4.A.i). (Rimebook, by rule)");
	}

	/**
	 * Whoever has the page open sees what waits for a second name, and what became of it.
	 */
	@Test
	void anOpenPageFollows() {
		SmallCompetition day = twoTeams();
		Visitor accountant = Crew.visitor(this.context, Role.ACCOUNTANT);
		String live = follow(accountant.open("/desk/protests/" + day.segment(1)));
		assertThat(accountant.open(live).status()).isEqualTo(204);
		CorrectionView proposed = propose(day, day.performances(1).get(1), 0);
		Visitor.Page waits = accountant.open(live);
		assertThat(waits.text()).contains("waiting for a second name");
		String then = follow(waits);
		assertThat(accountant.open(then).status()).isEqualTo(204);
		this.corrections.reject(proposed.id(), proposed.version(), "It was right", REFEREE);
		assertThat(accountant.open(then).text()).contains("turned down").doesNotContain("waiting for a second name");
	}

	private static String follow(Visitor.Page page) {
		return page.document().getElementById("overview").attr("hx-get");
	}

	/** Before there were keys, the English words alone were kept. */
	@Test
	void whyAProtestWasNotHeardBeforeThereWereKeysIsSaidAsItStands() {
		SmallCompetition day = twoTeams();
		ProtestView opinion = file(day, ProtestView.ProtestCategory.EVALUATION, null);
		this.jdbc.update("update protest set unheard = null, grounds = ? where id = ?",
				"Out of time: it was handed in 31 minutes after.", opinion.id().value());
		assertThat(this.protests.ofSegment(day.segment(1))).singleElement()
			.satisfies((protest) -> assertThat(protest.decision().grounds())
				.isEqualTo(Sentence.said("Out of time: it was handed in 31 minutes after.")));
	}

	@Test
	void protestIsDecidedOnce() {
		SmallCompetition day = twoTeams();
		ProtestView protest = file(day, ProtestView.ProtestCategory.CONDUCT, null);
		this.protests.decide(protest.id(), protest.version(), true, "The music stopped.", REFEREE);
		assertRefused("protest-decided",
				() -> this.protests.decide(protest.id(), protest.version() + 1, false, "No.", REFEREE));
	}

	@Test
	void protestHandedInAheadOfTimeIsRefusedByName() {
		SmallCompetition day = twoTeams();
		assertThatExceptionOfType(RimebookException.class)
			.isThrownBy(() -> file(day, ProtestView.ProtestCategory.CONDUCT, Instant.now().plus(Duration.ofHours(1))))
			.satisfies((refusal) -> assertThat(refusal.field()).isEqualTo("handedInAt"));
	}

	@Test
	void teamOfAnotherEventCannotProtest() {
		SmallCompetition day = twoTeams();
		SmallCompetition other = SmallCompetition.running(this.context, 2, 3);
		assertRefused("team-not-of-event", () -> this.protests.file(new Protests.FileProtest(day.segment(1),
				new ProtestView.Claim(other.entries().get(0).id(), ProtestView.ProtestCategory.CONDUCT, "text", 0),
				"Manager", null), SECRETARY));
	}

	/**
	 * Two teams, the first with high marks from all three judges, the second with low
	 * ones.
	 */
	private SmallCompetition twoTeams() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		for (CardMarks marks : List.of(new CardMarks(500, 500), LOW)) {
			PerformanceView performance = day.callNext(1);
			for (SeatView seat : day.seats()) {
				day.send(performance, seat, 1, marks);
			}
			day.close(performance);
		}
		return day;
	}

	private CorrectionView propose(SmallCompetition day, PerformanceView performance, int seat) {
		return this.corrections.propose(
				new Corrections.ProposeCorrection(MarksAmendment.on(performance.id(), day.seats().get(seat).id(), HIGH),
						"Typed one key off."),
				ACCOUNTANT);
	}

	private ProtestView file(SmallCompetition day, ProtestView.ProtestCategory category, @Nullable Instant at) {
		return this.protests.file(new Protests.FileProtest(day.segment(1),
				new ProtestView.Claim(day.entries().get(0).id(), category, "The music was too quiet.", 0),
				"Team manager", at), SECRETARY);
	}

	private String leader(SegmentId segment) {
		return this.standings.latest(segment).orElseThrow().standing().rows().get(0).entry();
	}

	private int version(SegmentId segment) {
		return this.standings.result(segment).orElseThrow().version();
	}

	private static boolean succeeds(Runnable act) {
		try {
			act.run();
			return true;
		}
		catch (RimebookException ex) {
			return false;
		}
	}

	private static void assertRefused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
	}

}
