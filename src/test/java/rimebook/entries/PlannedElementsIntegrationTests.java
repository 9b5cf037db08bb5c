package rimebook.entries;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.shared.RimebookException;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

@WholeApplication
class PlannedElementsIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private PlannedElements plans;

	@Autowired
	private JdbcClient database;

	private SmallCompetition day;

	private EntryView entry;

	@BeforeEach
	void aTeamIsEntered() {
		this.day = SmallCompetition.running(this.context, 2,
				new DraftEvent("Senior",
						DraftEvent.Judging.byPoints(3, new DraftEvent.PointsChoice("synchronized-2025-26", "senior")),
						List.of(CompetitionFixtures.aShort())));
		this.entry = this.day.entries().get(0);
	}

	@Test
	void aPastedListIsKeptInOrderAndWrittenAsTheTableDoes() {
		assertThat(plan("i4+PI3, ME4\n twe3; ac2", -1).codes()).containsExactly("I4+pi3", "ME4", "TwE3", "AC2");
		PlannedElements.PlanView kept = this.plans.of(this.entry.id(), this.day.segment(1));
		assertThat(plan("ME4", kept.version()).codes()).containsExactly("ME4");
		assertThat(plan(" ", kept.version() + 1).codes()).isEmpty();
		assertThat(this.database.sql(
				"select before_text || '>' || after_text from record_line where subject_id = ? and action = 'elements.planned' order by number")
			.param(this.entry.id().toString())
			.query(String.class)
			.list()).hasSize(3).first().asString().endsWith(">Short programme: I4+pi3 ME4 TwE3 AC2");
	}

	@Test
	void whatIsNoCodeIsRefusedWithItsPlace() {
		assertRefused("ME4 TwE9", -1, "unknown-code", "'TwE9' as element 2; the table of values of Senior");
		assertRefused("ME4 4-ME", -1, "code-malformed", "'4-ME' as element 2");
		assertRefused("ME4 ".repeat(41), -1, "too-many-elements", "41 elements; at most 40");
		assertThat(this.plans.of(this.entry.id(), this.day.segment(1)).codes()).isEmpty();
	}

	@Test
	void inPlacementJudgingOnlyTheFormIsLookedAt() {
		SmallCompetition placement = SmallCompetition.running(this.context, 1, 3);
		EntryId team = placement.entries().get(0).id();
		assertThat(
				this.plans.plan(new PlannedElements.PlanElements(team, placement.segment(1), "Z3 Home", -1), SECRETARY)
					.codes())
			.containsExactly("Z3", "Home");
	}

	@Test
	void twoPeopleDoNotOverwriteEachOther() {
		plan("ME4", -1);
		assertRefused("TwE3", -1, "stale-version", "Somebody else changed this plan");
		assertThat(this.plans.of(this.entry.id(), this.day.segment(1)).codes()).containsExactly("ME4");
	}

	@Test
	void anOpenedSegmentKeepsItsPlans() {
		plan("ME4", -1);
		this.day.open(1);
		assertRefused("TwE3", 0, "plan-fixed", "The segment is open");
		assertThat(Crew.visitor(this.context, Role.REFEREE).open(path("")).text())
			.contains("ME4", "The segment is open")
			.doesNotContain("Change");
	}

	@Test
	void theSecretaryTypesItOnTheEntrysPage() {
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		String form = "/elements/" + this.day.segment(1);
		Visitor.Page wrong = secretary.open(path(form)).submit("main form", Map.of("codes", "ME4\nXX7"));
		assertThat(wrong.status()).isEqualTo(422);
		assertThat(wrong.text()).contains("“Planned elements” has 'XX7' as element 2");
		assertThat(wrong.document().select("textarea").val()).isEqualTo("ME4\nXX7");
		Visitor.Page kept = wrong.submit("main form", Map.of("codes", "ME4\nI4"));
		assertThat(kept.text()).contains("The planned elements of Team 1 are kept.", "move element, level 4",
				"intersection, level 4");
		assertThat(secretary.open("/desk/entries/" + this.day.event().id())
			.document()
			.select("main a[href$=entry/" + this.entry.id() + "]")).hasSize(1);
	}

	private String path(String rest) {
		return "/desk/entries/entry/" + this.entry.id() + rest;
	}

	private PlannedElements.PlanView plan(String typed, int version) {
		return this.plans.plan(new PlannedElements.PlanElements(this.entry.id(), this.day.segment(1), typed, version),
				SECRETARY);
	}

	private void assertRefused(String typed, int version, String code, String sentence) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> plan(typed, version))
			.withMessageContaining(sentence)
			.extracting(RimebookException::code)
			.isEqualTo(code);
	}

}
