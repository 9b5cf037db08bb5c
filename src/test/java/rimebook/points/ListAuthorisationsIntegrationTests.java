package rimebook.points;

import java.util.List;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.tabulation.points.JudgedElement;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

@WholeApplication
class ListAuthorisationsIntegrationTests {

	private static final Actor CONTROLLER = new Actor("Ada Edge", "technical", "test");

	@Autowired
	private ApplicationContext context;

	@Autowired
	private ElementCalls calls;

	@Autowired
	private ListAuthorisations authorisations;

	@Autowired
	private LateDeductions late;

	@Autowired
	private DeductionNotes deductions;

	@Autowired
	private JdbcClient database;

	private SmallCompetition day;

	private PerformanceView skating;

	@BeforeEach
	void aTeamIsOnTheIce() {
		this.day = SmallCompetition.running(this.context, 1, CompetitionFixtures.aPointsEvent("Senior", 3));
		this.day.open(1);
		this.skating = this.day.callNext(1);
	}

	@Test
	void nothingIsClosedBeforeTheListIsAuthorised() {
		assertRefused(() -> this.authorisations.authorise(this.skating.id(), 1, CONTROLLER), "elements-not-called");
		CalledListView list = call(1, "ME4", false);
		this.day.seats().forEach((seat) -> PointsJudge.send(this.context, this.skating, seat, list, 1));
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> this.day.close(this.skating))
			.withMessageContaining("Still missing: the technical controller's authorisation.");
		ListAuthorisations.Authorised word = this.authorisations.authorise(this.skating.id(), 1, CONTROLLER);
		assertThat(word.controller()).isEqualTo("Ada Edge");
		assertThat(word.onPaper()).isFalse();
		assertThat(this.authorisations.authorise(this.skating.id(), 1, CONTROLLER)).isEqualTo(word);
		this.day.close(this.skating);
		assertThat(this.day.now(this.skating).status()).isEqualTo(PerformanceStatus.CLOSED);
		assertRefused(() -> this.authorisations.authorise(this.skating.id(), 1, CONTROLLER), "card-closed");
	}

	@Test
	void anOpenReviewIsNamedAndHoldsTheListBack() {
		call(1, "ME4", true);
		assertThatExceptionOfType(RimebookException.class)
			.isThrownBy(() -> this.authorisations.authorise(this.skating.id(), 1, CONTROLLER))
			.withMessageStartingWith("Still under review: element 1 (ME4).")
			.extracting(RimebookException::code)
			.isEqualTo("review-open");
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> this.day.close(this.skating))
			.withMessageContaining("the review of element 1 (ME4)");
	}

	@Test
	void aChangeMakesTheListOpenAgainOnRecord() {
		call(1, "ME4", false);
		this.authorisations.authorise(this.skating.id(), 1, CONTROLLER);
		call(2, "ME3", false);
		assertThat(this.authorisations.ofPerformance(this.skating.id())).isEmpty();
		assertRefused(() -> this.authorisations.authorise(this.skating.id(), 1, CONTROLLER), "list-changed");
		this.authorisations.confirmPaper(this.skating.id(), 2, " Ada Edge ", SmallCompetition.ACCOUNTANT);
		assertThat(this.authorisations.ofPerformance(this.skating.id()).orElseThrow().inWords())
			.isEqualTo("Ada Edge on paper, seen by Bo Tally");
		assertThat(this.database
			.sql("select action from record_line where subject_id = ? and action like 'elements.%' order by number")
			.param(this.skating.id().toString())
			.query(String.class)
			.list()).containsExactly("elements.called", "elements.authorised", "elements.opened-again",
					"elements.called", "elements.authorised");
		assertThat(this.database.sql("select count(*) from list_authorisation where performance_id = ?")
			.param(this.skating.id().value())
			.query(Integer.class)
			.single()).isEqualTo(2);
	}

	@Test
	void aDeductionAfterTheListWasAuthorisedAsksTheController() {
		call(1, "ME4", false);
		this.authorisations.authorise(this.skating.id(), 1, CONTROLLER);
		assertThat(this.late.ofPerformance(this.skating.id())).isEmpty();
		this.deductions.addOnce(this.skating.id(), 0, new DeductionNotes.NoteDeductions.Item("fall", 1),
				SmallCompetition.ACCOUNTANT);
		assertThat(this.late.ofPerformance(this.skating.id())).isPresent();
		assertThat(page(Role.TECHNICAL, "technical")).contains("Changed after the list was authorised: Fall: -1.00.",
				"Seen, as technical controller");
		assertThat(page(Role.REFEREE, "technical")).contains("Changed after the list was authorised")
			.doesNotContain("Seen, as technical controller");
		assertThat(page(Role.REFEREE, "stand")).contains("the technical controller has not seen it yet");
		assertThat(page(Role.ACCOUNTANT, "keying")).contains("the deductions were changed since");
		assertRefused(() -> this.late.see(this.skating.id(), 0, CONTROLLER), "deductions-changed");
		this.late.see(this.skating.id(), 1, CONTROLLER);
		this.late.see(this.skating.id(), 1, CONTROLLER);
		assertThat(page(Role.REFEREE, "stand")).doesNotContain("has not seen it yet");
		this.deductions.remove(this.skating.id(), 1, 0, SmallCompetition.ACCOUNTANT);
		String path = "/desk/technical/" + this.day.segment(1) + "/read-back";
		Crew.visitor(this.context, Role.TECHNICAL).open(path).press("main form[action$=/authorisation]");
		assertThat(this.late.ofPerformance(this.skating.id())).isEmpty();
		assertThat(this.database
			.sql("select count(*) from record_line where subject_id = ? and action = 'deductions.seen'")
			.param(this.skating.id().toString())
			.query(Integer.class)
			.single()).isEqualTo(2);
		assertThatExceptionOfType(DataAccessException.class)
			.isThrownBy(() -> this.database.sql("delete from deductions_seen").update());
	}

	@Test
	void theCardsAreClosedWithoutTheControllersSecondLook() {
		CalledListView list = call(1, "ME4", false);
		this.authorisations.authorise(this.skating.id(), 1, CONTROLLER);
		this.deductions.addOnce(this.skating.id(), 0, new DeductionNotes.NoteDeductions.Item("fall", 1),
				SmallCompetition.ACCOUNTANT);
		this.day.seats().forEach((seat) -> PointsJudge.send(this.context, this.skating, seat, list, 1));
		this.day.close(this.skating);
		assertRefused(() -> this.late.see(this.skating.id(), 1, CONTROLLER), "card-closed");
	}

	private String page(Role role, String desk) {
		return Crew.visitor(this.context, role).open("/desk/" + desk + "/" + this.day.segment(1)).text();
	}

	private CalledListView call(int sequence, String code, boolean review) {
		UUID before = this.calls.ofPerformance(this.skating.id())
			.map((list) -> list.elements().get(0).id())
			.orElse(null);
		return this.calls.call(new ElementCalls.CallElements(this.skating.id(), sequence, List
			.of(new ElementCalls.CallElements.Call(before, code, JudgedElement.ElementWorth.COUNTS, null, review))),
				CONTROLLER);
	}

	private static void assertRefused(Runnable act, String code) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.extracting(RimebookException::code)
			.isEqualTo(code);
	}

}
