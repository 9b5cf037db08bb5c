package rimebook.entries;

import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.competition.Cancellations;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.Competitions;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.rosters.RosterCheck;
import rimebook.shared.RimebookException;
import rimebook.testsupport.AskedByThisThread;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.StoredFindings;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/** A list of required elements warns wherever somebody can still put a plan right. */
@WholeApplication
class RequiredElementsIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private RequiredElements required;

	@Autowired
	private PlannedElements plans;

	@Autowired
	private JdbcClient database;

	@Autowired
	private RecordVerification record;

	private SmallCompetition day;

	private SegmentId segment;

	@BeforeEach
	void twoTeamsAreEntered() {
		this.day = points(2);
		this.segment = this.day.segment(1);
	}

	private SmallCompetition points(int teams) {
		return SmallCompetition.running(this.context, teams, senior());
	}

	private static DraftEvent senior() {
		return new DraftEvent("Senior",
				DraftEvent.Judging.byPoints(3, new DraftEvent.PointsChoice("synchronized-2025-26", "senior")),
				List.of(CompetitionFixtures.aShort()));
	}

	@Test
	void aListIsKeptOnTheRecordAndTakenAway() {
		StoredFindings stored = StoredFindings.since(this.record);
		RequiredElements.RequiredView kept = set("pb/B 1\n\n gl 0 - 1", null, 5, -1);
		assertThat(kept.written()).isEqualTo("PB/B 1\nGL 0-1");
		assertThat(set("PB/B 1\nGL 0-1", null, 5, kept.version()).version()).as("the same again")
			.isEqualTo(kept.version());
		assertThat(set(" ", null, null, kept.version()).list().isEmpty()).isTrue();
		assertThat(lines()).containsExactly(">Short programme: PB/B 1; GL 0-1, in all any to 5",
				"Short programme: PB/B 1; GL 0-1, in all any to 5>Short programme: nothing is asked");
		assertThat(stored.found()).isEmpty();
		this.database.sql("update required_programme set most_elements = 7 where segment_id = ?")
			.param(this.segment.value())
			.update();
		assertThat(stored.found()).isNotEmpty();
		this.database.sql("update required_programme set most_elements = null where segment_id = ?")
			.param(this.segment.value())
			.update();
	}

	@Test
	void whatCannotBeMeantIsRefusedWithItsLine() {
		assertRefused("I 1\nI4 1", "line-malformed", "line 2");
		assertRefused("one intersection", "line-malformed", "line 1");
		assertRefused("I 2-1", "line-figures", "line 1");
		assertRefused("I 1\nME 1\ni/CrI 1", "sign-twice", "line 3");
		assertRefused("XY 1", "sign-unknown", "'XY' in line 1");
		assertRefused("ME 1\n".repeat(250), "field-too-long", "");
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> set("I 1", 6, 5, -1))
			.satisfies((refusal) -> assertThat(refusal.field()).isEqualTo("most"));
		assertThat(this.required.of(this.segment).list().isEmpty()).isTrue();
	}

	@Test
	void ofTwoAtOnceTheLaterOneIsTold() throws Exception {
		RequiredElements.RequiredView seen = set("I 1", null, null, -1);
		set("I 2", null, null, seen.version());
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> set("I 3", null, null, seen.version()))
			.satisfies((refusal) -> {
				assertThat(refusal.code()).isEqualTo("stale-version");
				assertThat(refusal.sentence().english()).contains("what this segment asks of planned elements");
			});
	}

	@Test
	void everybodyWhoCanPutAPlanRightIsTold() {
		EntryView team = this.day.entries().get(0);
		EntryView other = this.day.entries().get(1);
		set("I 1\nME 1", 2, 2, -1);
		this.plans.plan(new PlannedElements.PlanElements(team.id(), this.segment, "I4 I3 ME4", -1), SECRETARY);
		String many = "Too many: intersection, 2 planned and at most 1 asked.";
		Map<EntryId, List<Sentence>> told = this.required.otherwise(List.of(this.day.event()), this.day.entries());
		assertThat(told.get(team.id())).extracting(Sentence::english)
			.containsExactly("Planned elements, Short programme. " + many,
					"Planned elements, Short programme. Too many: elements in all, 3 planned and at most 2 asked.");
		assertThat(told.get(other.id())).extracting(Sentence::english)
			.containsExactly("Nothing is planned for Short programme yet.");
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		String competition = this.day.competition().id().toString();
		assertThat(secretary.open("/desk/rosters/" + competition).text()).contains(many);
		assertThat(secretary.open("/desk/arrival/entry/" + team.id()).text()).contains(many);
		assertThat(secretary.open("/desk/entries/entry/" + team.id()).text()).contains(many);
		assertThat(secretary.open("/desk/letters/" + competition + "/to/MISSING").submit("main form", Map.of()).text())
			.contains(many);
		this.day.open(1);
		assertThat(this.required.otherwise(List.of(this.day.event()), this.day.entries())).as("too late").isEmpty();
		assertThatExceptionOfType(RimebookException.class)
			.isThrownBy(() -> set("I 1", null, null, this.required.of(this.segment).version()))
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo("plan-fixed"));
	}

	@Test
	void thePageCopiesAReadyListKeepsWhatWasTypedAndSaysItInWords() {
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		String address = "/desk/entries/required/" + this.segment;
		Visitor.Page copied = secretary.open(address + "?set=short-five-kinds");
		assertThat(copied.text()).contains("Nothing is kept before you save it.", "preview of the world championships");
		Visitor.Page refused = copied.submit("form.sheet", Map.of("lines", "I 1\nnothing"));
		assertThat(refused.text()).contains("line 2");
		assertThat(refused.document().select("textarea").text()).contains("nothing");
		Visitor.Page kept = secretary.open(address + "?set=short-five-kinds").submit("form.sheet", Map.of());
		assertThat(kept.path()).isEqualTo(address);
		assertThat(kept.text()).contains("linear block or pivoting block or artistic block: 1", "elements in all: 5");
		Visitor.Page taken = secretary.open(address)
			.submit("form.sheet", Map.of("lines", "", "least", "", "most", "none"));
		assertThat(taken.text()).contains("is no whole number; please type one, or nothing");
		assertThat(secretary.open(address).submit("form.sheet", Map.of("lines", "", "least", "", "most", "")).text())
			.contains("Nothing is asked.");
	}

	@Test
	void whereThereIsNoTableThePageSaysSo() {
		SmallCompetition placement = SmallCompetition.running(this.context, 1, 3);
		EntryId team = placement.entries().get(0).id();
		this.required.set(new RequiredElements.SetRequired(placement.segment(1), "", "circle/C 1", null, null, -1),
				SECRETARY);
		this.plans.plan(new PlannedElements.PlanElements(team, placement.segment(1), "C2 c", -1), SECRETARY);
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		assertThat(secretary.open("/desk/entries/required/" + placement.segment(1)).text())
			.contains("There is no table of values here");
		assertThat(secretary.open("/desk/entries/entry/" + team).text())
			.contains("Too many: circle or C, 2 planned and at most 1 asked.");
	}

	@Test
	void anEventMadeLikeAnotherAsksTheSame() {
		SmallCompetition before = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 1, senior());
		this.required.set(new RequiredElements.SetRequired(before.segment(1), "", "I 1", null, 5, -1), SECRETARY);
		EventView copy = this.context.getBean(Competitions.class).copyEvent(before.event().id(), "Senior B", SECRETARY);
		RequiredElements.RequiredView asked = this.required.of(copy.segments().get(0).id());
		assertThat(asked.list()).isEqualTo(this.required.of(before.segment(1)).list());
		assertThatExceptionOfType(RimebookException.class)
			.isThrownBy(() -> this.context.getBean(Cancellations.class).remove(copy.id(), SECRETARY))
			.satisfies((refusal) -> assertThat(refusal.sentence().english()).contains("asks of planned elements"));
	}

	@Test
	void theQuestionsDoNotGrowWithTheTeams() {
		assertThat(asked(points(6))).isEqualTo(asked(points(2)));
	}

	private int asked(SmallCompetition competition) {
		this.required.set(new RequiredElements.SetRequired(competition.segment(1), "", "I 1", null, null, -1),
				SECRETARY);
		competition.entries()
			.forEach((entry) -> this.plans
				.plan(new PlannedElements.PlanElements(entry.id(), competition.segment(1), "ME4", -1), SECRETARY));
		return AskedByThisThread
			.during(() -> assertThat(this.context.getBean(RosterCheck.class).of(competition.competition().id()))
				.allSatisfy((team) -> assertThat(team.plans()).hasSize(1)))
			.size();
	}

	private RequiredElements.RequiredView set(String lines, @Nullable Integer least, @Nullable Integer most,
			int version) {
		return this.required.set(new RequiredElements.SetRequired(this.segment, "", lines, least, most, version),
				SECRETARY);
	}

	private void assertRefused(String lines, String code, String words) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> set(lines, null, null, -1))
			.satisfies((refusal) -> {
				assertThat(refusal.code()).isEqualTo(code);
				assertThat(refusal.field()).isEqualTo("lines");
				assertThat(refusal.sentence().english()).contains(words);
			});
	}

	private List<String> lines() {
		return this.database
			.sql("select before_text || '>' || after_text from record_line where subject_id = ? order by number")
			.param(this.segment.toString())
			.query(String.class)
			.list();
	}

}
