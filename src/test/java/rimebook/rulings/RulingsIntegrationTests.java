package rimebook.rulings;

import java.util.List;
import java.util.Map;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.Cancellations;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.Competitions;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RimebookException;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.tuple;

@WholeApplication
class RulingsIntegrationTests {

	private static final Actor SECRETARY = CompetitionFixtures.SECRETARY;

	private static final Actor REFEREE = SmallCompetition.REFEREE;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Rulings rulings;

	@Autowired
	private JdbcClient database;

	private SmallCompetition day;

	private EntryView team;

	@BeforeEach
	void aTeamIsEntered() {
		this.day = SmallCompetition.running(this.context, 2, 3);
		this.team = this.day.entries().get(0);
	}

	@Test
	void aQuestionIsOpenUntilTheRefereeRules() {
		QuestionView question = ask("May the cord hang loose?");
		assertThat(question.isOpen()).isTrue();
		assertThat(this.rulings.ofEntry(this.team.id())).isEmpty();
		assertThat(this.rulings.openOf(this.team.id(), this.day.segment(1))).hasSize(1);
		QuestionView ruled = this.rulings
			.rule(given(question, 0, RulingView.Verdict.CONDITIONAL, "if it is sewn on", ""), REFEREE);
		assertThat(ruled.current()).satisfies((ruling) -> {
			assertThat(ruling.answer().condition()).isEqualTo("if it is sewn on");
			assertThat(ruling.givenBy()).isEqualTo(REFEREE.name());
			assertThat(ruling.answer().shown()).isTrue();
		});
		assertThat(this.rulings.ofEntry(this.team.id())).containsExactly(ruled);
		assertThat(this.rulings.openOf(this.team.id(), this.day.segment(1))).isEmpty();
		assertThat(line("ruling.given"))
			.isEqualTo("allowed with a condition: if it is sewn on. It is part of it. (C 4)");
	}

	@Test
	void aRulingIsOnlySupersededAndBothStay() {
		QuestionView question = ask("May the cord hang loose?");
		this.rulings.rule(given(question, 0, RulingView.Verdict.ALLOWED, "", ""), REFEREE);
		assertRefused("field-missing", "reason",
				() -> this.rulings.rule(given(question, 1, RulingView.Verdict.NOT_ALLOWED, "", ""), REFEREE));
		QuestionView now = this.rulings
			.rule(given(question, 1, RulingView.Verdict.NOT_ALLOWED, "", "It came off in practice."), REFEREE);
		assertThat(now.rulings()).extracting(RulingView::number, (ruling) -> ruling.answer().verdict())
			.containsExactly(tuple(2, RulingView.Verdict.NOT_ALLOWED), tuple(1, RulingView.Verdict.ALLOWED));
		assertThat(this.rulings.ofEntry(this.team.id())).singleElement()
			.satisfies((one) -> assertThat(one.current().answer().verdict()).isEqualTo(RulingView.Verdict.NOT_ALLOWED));
		assertThat(line("ruling.superseded")).startsWith("not allowed");
	}

	@Test
	void nobodyRulesOnAnOlderLook() {
		QuestionView question = ask("May the cord hang loose?");
		this.rulings.rule(given(question, 0, RulingView.Verdict.ALLOWED, "", ""), REFEREE);
		assertRefused("stale-version", null,
				() -> this.rulings.rule(given(question, 0, RulingView.Verdict.NOT_ALLOWED, "", ""), REFEREE));
	}

	@Test
	void aRulingOnOneSegmentCountsThereOnly() {
		QuestionView question = this.rulings.ask(new Rulings.AskQuestion(this.team.id(), this.day.segment(2),
				QuestionView.RulingTopic.ELEMENT, "Is the lift a lift?", "Mira Sund"), SECRETARY);
		this.rulings.rule(given(question, 0, RulingView.Verdict.NOT_ALLOWED, "", ""), REFEREE);
		assertThat(this.rulings.ofEntry(this.team.id(), this.day.segment(1))).isEmpty();
		assertThat(this.rulings.ofEntry(this.team.id(), this.day.segment(2))).hasSize(1);
		assertThat(question.about().segmentName()).isEqualTo(this.day.event().segments().get(1).name());
	}

	@Test
	void aSegmentOnWhichARulingHangsIsNeitherRemovedNorDropped() {
		QuestionView question = this.rulings.ask(new Rulings.AskQuestion(this.team.id(), this.day.segment(2),
				QuestionView.RulingTopic.ELEMENT, "Is the lift a lift?", "Mira Sund"), SECRETARY);
		assertSegmentStays(2);
		this.rulings.rule(given(question, 0, RulingView.Verdict.NOT_ALLOWED, "", ""), REFEREE);
		assertSegmentStays(2);
		assertThat(this.rulings.ofEntry(this.team.id(), this.day.segment(1))).isEmpty();
		this.context.getBean(Cancellations.class).remove(this.day.segment(1), SECRETARY);
		assertThat(this.rulings.question(question.id()).about().segmentName()).isEqualTo("Free skating");
	}

	private void assertSegmentStays(int position) {
		EventView event = this.day.event();
		String name = event.segments().get(position - 1).name();
		DraftEvent all = event.draft();
		DraftEvent without = new DraftEvent(all.name(), all.judging(),
				all.segments().stream().filter((segment) -> !segment.name().equals(name)).toList());
		for (ThrowingCallable act : List.<ThrowingCallable>of(
				() -> this.context.getBean(Cancellations.class).remove(this.day.segment(position), SECRETARY),
				() -> this.context.getBean(Competitions.class)
					.changeEvent(event.id(), event.version(), without, SECRETARY))) {
			assertThatExceptionOfType(ConflictException.class).isThrownBy(act)
				.withMessage("%s asked the referee about %s (element), so %s stays on record. Cancel it instead.",
						this.team.team().name(), name, name)
				.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo("removal-refused"));
		}
	}

	@Test
	void whatIsMissingIsNamed() {
		assertRefused("field-missing", "question", () -> ask(" "));
		assertRefused("field-missing", "askedBy",
				() -> this.rulings.ask(
						new Rulings.AskQuestion(this.team.id(), null, QuestionView.RulingTopic.PROP, "A flag?", ""),
						SECRETARY));
		SmallCompetition other = SmallCompetition.running(this.context, 1, 3);
		assertRefused("segment-not-of-event", "segment", () -> this.rulings.ask(new Rulings.AskQuestion(this.team.id(),
				other.segment(1), QuestionView.RulingTopic.PROP, "A flag?", "Mira Sund"), SECRETARY));
		QuestionView question = ask("May the cord hang loose?");
		assertRefused("field-missing", "condition",
				() -> this.rulings.rule(given(question, 0, RulingView.Verdict.CONDITIONAL, "", ""), REFEREE));
		assertRefused("condition-without-use", "condition",
				() -> this.rulings.rule(given(question, 0, RulingView.Verdict.ALLOWED, "if sewn on", ""), REFEREE));
		assertRefused("field-missing", "grounds", () -> this.rulings.rule(new Rulings.GiveRuling(question.id(), 0,
				new RulingView.Answer(RulingView.Verdict.ALLOWED, "", "", "", false), ""), REFEREE));
	}

	@Test
	void aTeamThatHasWithdrawnAsksNothing() {
		this.context.getBean(Entries.class).withdraw(this.team.id(), this.team.version(), "Flu.", SECRETARY);
		assertRefused("team-withdrawn", "entry", () -> ask("May the cord hang loose?"));
	}

	@Test
	void theDatabaseKeepsQuestionsAndRulings() {
		QuestionView question = ask("May the cord hang loose?");
		this.rulings.rule(given(question, 0, RulingView.Verdict.ALLOWED, "", ""), REFEREE);
		for (String sql : List.of("update ruling set grounds = 'x'", "delete from ruling",
				"update ruling_question set text = 'x'", "delete from ruling_question")) {
			assertThatExceptionOfType(DataAccessException.class).as(sql)
				.isThrownBy(() -> this.database.sql(sql).update())
				.withMessageContaining("keeps what was written");
		}
	}

	/** The pages: a secretary asks but does not rule, others only read. */
	@Test
	void theSecretaryAsksAndOnlyTheRefereeRules() {
		QuestionView question = ask("May the cord hang loose?");
		String path = "/desk/rulings/" + question.id();
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		assertThat(secretary.open(path).document().select("a[href$=/ruling]")).isEmpty();
		assertThat(secretary.open(path + "/ruling").status()).isEqualTo(403);
		Visitor.Page ask = secretary.open("/desk/rulings/new/" + this.day.competition().id());
		Visitor.Page wrong = ask.submit("form.sheet", Map.of("question", "A flag on the ice?"));
		assertThat(wrong.status()).isEqualTo(422);
		assertThat(wrong.text()).contains("Choose the team that asks.");
		Visitor announcer = Crew.visitor(this.context, Role.ANNOUNCER);
		assertThat(announcer.open(path).text()).contains("May the cord hang loose?", "The referee has not ruled yet.");
		assertThat(announcer.open("/desk/rulings/new/" + this.day.competition().id()).document().select("form.sheet"))
			.isNotEmpty();
		assertThat(announcer.open("/desk/rulings?competition=" + this.day.competition().id())
			.document()
			.select("a[href*=/rulings/new]")).isEmpty();
	}

	@Test
	void theListIsSearchedAndNarrowed() {
		ask("May the cord hang loose?");
		QuestionView answered = this.rulings.ask(new Rulings.AskQuestion(this.day.entries().get(1).id(), null,
				QuestionView.RulingTopic.PROP, "A flag?", "Ole Brandt"), SECRETARY);
		this.rulings.rule(given(answered, 0, RulingView.Verdict.NOT_ALLOWED, "", ""), REFEREE);
		Visitor reader = Crew.visitor(this.context, Role.TECHNICAL);
		String list = "/desk/rulings?competition=" + this.day.competition().id();
		assertThat(reader.open(list).document().select("tbody tr")).hasSize(2);
		assertThat(reader.open(list + "&state=open").document().select("tbody tr").eachText()).singleElement()
			.asString()
			.contains("cord");
		assertThat(reader.open(list + "&state=answered").document().select("tbody tr").eachText()).singleElement()
			.asString()
			.contains("flag", "not allowed");
		assertThat(reader.open(list + "&words=FLAG+brandt").document().select("tbody tr")).hasSize(1);
		assertThat(reader.open(list + "&words=sequins").text()).contains("No question fits.");
	}

	private QuestionView ask(String text) {
		return this.rulings.ask(
				new Rulings.AskQuestion(this.team.id(), null, QuestionView.RulingTopic.COSTUME, text, "Mira Sund"),
				SECRETARY);
	}

	private static Rulings.GiveRuling given(QuestionView question, int seen, RulingView.Verdict verdict,
			String condition, String reason) {
		return new Rulings.GiveRuling(question.id(), seen,
				new RulingView.Answer(verdict, condition, "It is part of it.", "C 4", true), reason);
	}

	private String line(String action) {
		return this.database.sql("select after_text from record_line where action = ? order by number desc")
			.param(action)
			.query(String.class)
			.list()
			.get(0);
	}

	private static void assertRefused(String code, String field, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run).satisfies((refusal) -> {
			assertThat(refusal.code()).isEqualTo(code);
			assertThat(refusal.field()).isEqualTo(field);
		});
	}

}
