package rimebook.points;

import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.testsupport.Crew;
import rimebook.testsupport.Races;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

@WholeApplication
class TechnicalDeskIntegrationTests {

	/** Of one list, which takes 40 elements. */
	private static final int MOST_ROUNDS = 20;

	private static final Actor SPECIALIST = new Actor("Bo Arc", "technical", "test");

	private static final Actor OPERATOR = new Actor("Di Key", "technical", "test");

	@Autowired
	private ApplicationContext context;

	@Autowired
	private TechnicalDesk desk;

	@Autowired
	private ListAuthorisations authorisations;

	@Autowired
	private DeductionNotes deductions;

	private SmallCompetition day;

	private PerformanceView skating;

	@BeforeEach
	void aTeamIsOnTheIce() {
		this.day = SmallCompetition.running(this.context, 1, CompetitionFixtures.aPointsEvent("Senior", 3));
		this.day.open(1);
		this.skating = this.day.callNext(1);
	}

	@Test
	void anElementThatWasTakenOutComesBackWithItsGrades() {
		CalledListView list = edit(0, TechnicalDesk.Act.CALL, null, "ME4");
		list = edit(1, TechnicalDesk.Act.CALL, null, "AC2");
		UUID first = list.elements().get(0).id();
		PointsJudge.send(this.context, this.skating, this.day.seats().get(0), list, 3);
		assertThat(edit(2, TechnicalDesk.Act.REMOVE, first, "").elements()).extracting(CalledElement::code)
			.containsExactly("AC2");
		CalledListView back = edit(3, TechnicalDesk.Act.UNDO, null, "");
		assertThat(back.elements().get(0).id()).isEqualTo(first);
		assertThat(this.context.getBean(PointsSubmission.class)
			.ofPerformance(this.skating.id())
			.get(this.day.seats().get(0).id())
			.marks()
			.grade(back.elements().get(0))).isEqualTo(3);
	}

	@Test
	void theOnlyElementCanBeTakenOutButNotAuthorisedAway() {
		UUID only = edit(0, TechnicalDesk.Act.CALL, null, "ME4").elements().get(0).id();
		assertThat(edit(1, TechnicalDesk.Act.REMOVE, only, "").elements()).isEmpty();
		assertRefused(() -> this.authorisations.authorise(this.skating.id(), 2, SPECIALIST), "elements-not-called");
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> this.day.close(this.skating))
			.withMessageContaining("the called elements");
	}

	@Test
	void anActThatWasSentTwiceIsDoneOnceAndOneThatChangesNothingMakesNoVersion() {
		CalledListView first = edit(0, TechnicalDesk.Act.CALL, null, "ME4");
		assertThat(edit(0, TechnicalDesk.Act.CALL, null, "ME4")).isEqualTo(first);
		this.authorisations.authorise(this.skating.id(), 1, SPECIALIST);
		assertThat(edit(1, TechnicalDesk.Act.LEVEL, first.elements().get(0).id(), "4").sequence()).isEqualTo(1);
		assertThat(this.authorisations.ofPerformance(this.skating.id())).isPresent();
	}

	@Test
	void anActWhoseAnswerWasLostIsDoneOnceAlsoAfterOthersWentOn() {
		edit(0, TechnicalDesk.Act.CALL, null, "ME4");
		edit(1, TechnicalDesk.Act.CALL, null, "AC2");
		assertThat(edit(0, TechnicalDesk.Act.CALL, null, "ME4").elements()).extracting(CalledElement::code)
			.containsExactly("ME4", "AC2");
		this.deductions.addOnce(this.skating.id(), 0, new DeductionNotes.NoteDeductions.Item("fall", 1), OPERATOR);
		this.deductions.addOnce(this.skating.id(), 1, new DeductionNotes.NoteDeductions.Item("fall", 2), SPECIALIST);
		assertThat(this.deductions
			.addOnce(this.skating.id(), 0, new DeductionNotes.NoteDeductions.Item("fall", 1), OPERATOR)
			.deductions()).hasSize(2);
		assertRefused(() -> edit(0, TechnicalDesk.Act.CALL, null, "GL3"), "list-sequence-taken");
	}

	@Test
	void whoComesSecondIsToldWhatTheFirstDid() {
		UUID element = edit(0, TechnicalDesk.Act.CALL, null, "ME4").elements().get(0).id();
		edit(1, TechnicalDesk.Act.LEVEL, element, "3");
		edit(2, TechnicalDesk.Act.REVIEW, element, "");
		assertRefused(() -> this.desk
			.edit(new TechnicalDesk.Edit(this.skating.id(), 1, TechnicalDesk.Act.CALL, null, "AC2"), OPERATOR),
				"list-sequence-taken");
		assertThat(this.desk.since(this.skating.id(), 1)).extracting((change) -> change.by() + ": " + change.words())
			.containsExactly("Bo Arc: [element 1 (ME4) changed to ME3]", "Bo Arc: [element 1 (ME3) put under review]");
	}

	@Test
	void ofTwoDesksAtOnceOneIsFirstAndNeitherIsLost() throws Exception {
		for (int round = 0; round < Races.ROUNDS; round++) {
			int seen = 2 * (round % MOST_ROUNDS);
			if (seen == 0) {
				aTeamIsOnTheIce();
			}
			List<Boolean> first = Races.both(() -> isFirst(seen, "ME4", SPECIALIST),
					() -> isFirst(seen, "AC2", OPERATOR));
			assertThat(first).containsExactlyInAnyOrder(true, false);
			String second = first.get(0) ? "AC2" : "ME4";
			assertThat(this.desk.since(this.skating.id(), seen)).hasSize(1);
			assertThat(edit(seen + 1, TechnicalDesk.Act.CALL, null, second).elements()).hasSize(seen + 2);
		}
	}

	private boolean isFirst(int seen, String code, Actor actor) {
		try {
			this.desk.edit(new TechnicalDesk.Edit(this.skating.id(), seen, TechnicalDesk.Act.CALL, null, code), actor);
			return true;
		}
		catch (RimebookException ex) {
			assertThat(ex.code()).isEqualTo("list-sequence-taken");
			return false;
		}
	}

	@Test
	void fallsAreNotedAndTakenBackWithTheName() {
		this.deductions.addOnce(this.skating.id(), 0, new DeductionNotes.NoteDeductions.Item("fall", 1), OPERATOR);
		this.deductions.addOnce(this.skating.id(), 1, new DeductionNotes.NoteDeductions.Item("fall", 2), SPECIALIST);
		assertRefused(() -> this.deductions.addOnce(this.skating.id(), 1,
				new DeductionNotes.NoteDeductions.Item("illegal", 1), OPERATOR), "list-sequence-taken");
		assertRefused(() -> this.deductions.addOnce(this.skating.id(), 2,
				new DeductionNotes.NoteDeductions.Item("luck", 1), OPERATOR), "unknown-deduction");
		assertRefused(() -> this.deductions.remove(this.skating.id(), 2, 2, OPERATOR), "deduction-unknown");
		this.deductions.remove(this.skating.id(), 2, 0, OPERATOR);
		assertThat(this.deductions.ofPerformance(this.skating.id()).orElseThrow().deductions()).singleElement()
			.satisfies((fall) -> {
				assertThat(fall.count()).isEqualTo(2);
				assertThat(fall.notedBy()).isEqualTo("Bo Arc");
			});
	}

	@Test
	void nothingIsDoneForATeamThatIsNotOnTheIce() {
		edit(0, TechnicalDesk.Act.CALL, null, "ME4");
		CalledListView list = edit(1, TechnicalDesk.Act.CALL, null, "AC2");
		this.day.seats().forEach((seat) -> PointsJudge.send(this.context, this.skating, seat, list, 0));
		this.authorisations.authorise(this.skating.id(), 2, SPECIALIST);
		this.day.close(this.skating);
		assertRefused(() -> edit(2, TechnicalDesk.Act.CALL, null, "TwE3"), "card-closed");
		assertRefused(() -> this.deductions.addOnce(this.skating.id(), 0,
				new DeductionNotes.NoteDeductions.Item("fall", 1), OPERATOR), "card-closed");
	}

	@Test
	void theDeskIsReadWithoutJavaScript() {
		edit(0, TechnicalDesk.Act.CALL, null, "ME4");
		Visitor technical = Crew.visitor(this.context, Role.TECHNICAL);
		String path = "/desk/technical/" + this.day.segment(1);
		assertThat(technical.open("/desk/technical").document().select("a[href=" + path + "]")).hasSize(1);
		assertThat(technical.open(path).text()).contains("Team 1", "move element, level 4", "The keying desk works");
		Visitor.Page authorised = technical.open(path + "/read-back").press("main form[action$=/authorisation]");
		assertThat(authorised.text()).contains("The list of elements is authorised.", "authorised by The technical-");
		assertThat(
				technical.open("/desk/technical/" + SmallCompetition.running(this.context, 1, 3).segment(1)).status())
			.isEqualTo(404);
	}

	@Test
	void theDeskSaysWhoComesNextWhileNobodyIsOnTheIce() {
		SmallCompetition other = SmallCompetition.running(this.context, 1,
				CompetitionFixtures.aPointsEvent("Senior", 3));
		Visitor technical = Crew.visitor(this.context, Role.TECHNICAL);
		String path = "/desk/technical/" + other.segment(1);
		assertThat(technical.open(path).text()).contains("The segment is not open yet");
		other.open(1);
		assertThat(technical.open(path).text()).contains("Nobody is on the ice. Next: No. 1, Team 1;");
		assertThat(technical.open(path + "/live").text()).contains("Nobody is on the ice. Next: No. 1, Team 1;");
		PerformanceView only = other.callNext(1);
		this.context.getBean(SegmentRun.class)
			.end(only.id(), only.version(), PerformanceStatus.WITHDRAWN, "Illness", SmallCompetition.REFEREE);
		assertThat(technical.open(path).text()).contains("nobody is left to skate");
	}

	private CalledListView edit(int seen, TechnicalDesk.Act act, @Nullable UUID element, String value) {
		return this.desk.edit(new TechnicalDesk.Edit(this.skating.id(), seen, act, element, value), SPECIALIST);
	}

	private static void assertRefused(Runnable act, String code) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.extracting(RimebookException::code)
			.isEqualTo(code);
	}

}
