package rimebook;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.SegmentId;
import rimebook.draw.DrawMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.draw.StartingOrderView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.results.ResultPublication;
import rimebook.results.SegmentResultView;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.shared.RimebookException;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.StoredFindings;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Teams that come after the draw, up to a signed result. */
@WholeApplication
class LateEntryIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private StartingOrderDraw draw;

	@Autowired
	private Entries entries;

	@Autowired
	private SegmentRun run;

	@Autowired
	private Standings standings;

	@Autowired
	private RecordVerification record;

	private final String unique = UUID.randomUUID().toString().substring(0, 8);

	private SmallCompetition day;

	private Visitor secretary;

	private Visitor referee;

	private StoredFindings stored;

	@BeforeEach
	void drawFourTeams() {
		this.stored = StoredFindings.since(this.record);
		this.day = SmallCompetition.running(this.context, 4, CompetitionFixtures.anEvent("Junior", 3).signedAtOnce());
		this.day.draw(1);
		this.secretary = Crew.visitor(this.context, Role.SECRETARY);
		this.referee = Crew.visitor(this.context, Role.REFEREE);
	}

	@Test
	void aLateTeamGetsTheNextNumberAndSkatesUpToASignedResult() {
		List<EntryId> drawn = starts().stream().map(StartingOrderView.Start::entry).toList();
		EntryId late = enter("Late Lights");
		String stand = "/desk/stand/" + this.day.segment(1);
		assertThat(this.referee.open(stand).text()).contains("Came after the draw: Late Lights " + this.unique);
		assertRefused("order-incomplete", () -> this.run.open(this.day.segment(1), SmallCompetition.REFEREE));

		Visitor.Page readOnly = this.secretary.open(drawPage());
		assertThat(readOnly.text()).contains("Teams without a number", "Late Lights " + this.unique);
		assertThat(readOnly.document().select("main form")).isEmpty();
		Visitor.Page choice = this.referee.open(drawPage());
		assertThat(choice.text()).contains("The team gets number 5 in warm-up group 1, which then has 5 teams",
				"more than the 4 a group was to have", "Every other team keeps number and group",
				"All numbers and groups are new");
		Visitor.Page unsaid = choice.submit("form[action$=/late]", Map.of());
		assertThat(unsaid.status()).isEqualTo(422);
		assertThat(unsaid.document().select("#lateReason[aria-invalid=true]")).hasSize(1);
		Visitor.Page given = choice.submit("form[action$=/late]", Map.of("lateReason", "Form lost in the post."));
		assertThat(given.status()).isEqualTo(200);
		assertThat(given.text()).contains("The numbers are given", "added after the draw",
				"Added to because Form lost in the post.");
		assertThat(choice.submit("form[action$=/late]", Map.of("lateReason", "Twice.")).text())
			.contains("Somebody else changed this starting order");
		assertThat(starts()).extracting(StartingOrderView.Start::entry)
			.startsWith(drawn.toArray(EntryId[]::new))
			.hasSize(5)
			.endsWith(late);
		assertThat(starts().get(4).group()).isEqualTo(starts().get(3).group());
		assertThat(publicOrder().text()).contains("Late Lights " + this.unique + " Late Club", "added after the draw");
		assertThat(publicOrder().document().select("tr[data-ticket]")).hasSize(5);
		assertThat(publicOrder().document().select("tr[data-added]")).hasSize(1);

		this.run.open(this.day.segment(1), SmallCompetition.REFEREE);
		EntryId later = enter("Later Lights");
		PerformanceView first = this.day.performances(1).get(0);
		assertRefused("order-incomplete", () -> this.run.call(first.id(), first.version(), SmallCompetition.REFEREE));
		Visitor.Page opened = this.referee.open(drawPage());
		assertThat(opened.text()).contains("The team gets number 6", "The segment is open");
		opened.submit("form[action$=/late]", Map.of("lateReason", "By word of the referee."));
		assertThat(this.day.performances(1)).extracting(PerformanceView::status)
			.hasSize(6)
			.containsOnly(PerformanceStatus.WAITING);
		assertThat(this.day.performances(1).get(5).entry()).isEqualTo(later);

		this.day.skateNext(1);
		Visitor.Page shut = this.secretary.open("/desk/entries/" + this.day.event().id());
		assertThat(shut.text()).contains("was called, so no team comes into this event any more");
		assertThat(shut.document().select("form.sheet")).isEmpty();
		this.day.skateRest(1);
		sign(this.day.segment(1));
		this.day.open(2);
		this.day.skateRest(2);
		sign(this.day.segment(2));
		assertThat(this.standings.latest(this.day.event().id()).orElseThrow().standing().rows())
			.filteredOn((row) -> row.entry().equals(late.toString()) || row.entry().equals(later.toString()))
			.hasSize(2)
			.allSatisfy((row) -> assertThat(row.place()).isBetween(1, 6));
		assertThat(this.standings.result(this.day.segment(2)).orElseThrow().state())
			.isEqualTo(SegmentResultView.SegmentResultState.OFFICIAL);
		assertThat(this.stored.found()).isEmpty();
		assertThat(this.record.verify().isWhole()).isTrue();
	}

	@Test
	void whatWasTypedSurvivesARefusal() {
		Visitor.Page refused = this.secretary.open("/desk/entries/" + this.day.event().id())
			.submit("form.sheet", Map.of("team", "Late Lights", "club", "Late Club " + this.unique, "town",
					"Skerrywick", "spokenAs", "late"));
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.text()).contains("A late entry needs a reason");
		assertThat(refused.document().select("form.sheet input[type=text]").eachAttr("value")).contains("Late Lights",
				"Late Club " + this.unique, "Skerrywick", "late");
		assertThat(this.day.entries()).hasSize(4);
	}

	@Test
	void theRefereeMayDrawEverybodyAgain() {
		EntryId late = enter("Late Lights");
		Visitor.Page again = this.referee.open(drawPage())
			.submit("form[action$=" + this.day.segment(1) + "]",
					Map.of("seed", "another", "reason", "A team came late."));
		assertThat(again.status()).isEqualTo(200);
		StartingOrderView order = this.draw.ofSegment(this.day.segment(1)).orElseThrow();
		assertThat(order.how().added()).isZero();
		assertThat(order.starts()).extracting(StartingOrderView.Start::entry).hasSize(5).contains(late);
		assertThat(order.starts()).extracting(StartingOrderView.Start::ticket)
			.isSortedAccordingTo((one, other) -> one.compareTo(other));
		assertThat(this.draw.late(this.day.segment(1))).isEmpty();
		this.run.open(this.day.segment(1), SmallCompetition.REFEREE);
	}

	/** One team left after the opening, one is ill at the door, and one comes late. */
	@Test
	void anOpenSegmentIsDrawnAgainUntilItsFirstTeamIsCalled() {
		SegmentId segment = this.day.segment(1);
		this.run.open(segment, SmallCompetition.REFEREE);
		Map<EntryId, PerformanceId> before = this.day.performances(1)
			.stream()
			.collect(Collectors.toMap(PerformanceView::entry, PerformanceView::id));
		EntryView gone = this.entries.entry(starts().get(1).entry());
		withdrawn(gone);
		PerformanceView ended = this.day.performances(1).get(2);
		this.run.end(ended.id(), ended.version(), PerformanceStatus.WITHDRAWN, "Ill at the door.",
				SmallCompetition.REFEREE);
		EntryId late = enter("Late Lights");
		Visitor.Page page = this.referee.open(drawPage());
		assertThat(page.text()).contains("The segment is open. If it is drawn again, every number changes at once");
		Visitor.Page again = page.submit("form[action$=" + segment + "]",
				Map.of("seed", "another", "reason", "A team came late."));
		assertThat(again.status()).isEqualTo(200);
		assertThat(page.submit("form[action$=" + segment + "]", Map.of("seed", "mine", "reason", "Too slow.")).text())
			.contains("Somebody else changed this starting order");
		assertThat(starts()).extracting(StartingOrderView.Start::entry)
			.hasSize(3)
			.contains(late)
			.doesNotContain(gone.id(), ended.entry());
		assertThat(this.day.performances(1)).hasSize(3).allSatisfy((performance) -> {
			StartingOrderView.Start start = starts().get(performance.startNumber() - 1);
			assertThat(start.entry()).isEqualTo(performance.entry());
			assertThat(start.group()).isEqualTo(performance.start().group());
			assertThat(performance.status()).isEqualTo(PerformanceStatus.WAITING);
			if (!performance.entry().equals(late)) {
				assertThat(performance.id()).isEqualTo(before.get(performance.entry()));
			}
		});
		assertThat(this.standings.latest(segment).orElseThrow().standing().rows()).isEmpty();
		assertThat(this.referee.open("/desk/stand/" + segment).text()).contains("Late Lights " + this.unique);
		assertThat(publicOrder().document().select("tr[data-ticket]")).hasSize(3);
		assertThat(this.stored.found()).isEmpty();
		this.day.skateNext(1);
		assertRefused("draw-too-late",
				() -> this.draw.draw(
						new StartingOrderDraw.Order(segment, DrawMethod.WHOLE_FIELD, "late", 4, "Much too late."),
						SmallCompetition.REFEREE));
		assertThat(this.referee.open(drawPage()).text())
			.contains("The first team of this segment was called; its starting order stays as it was drawn.");
		this.day.skateRest(1);
		sign(segment);
		assertThat(this.stored.found()).isEmpty();
		assertThat(this.record.verify().isWhole()).isTrue();
	}

	/** What nobody sees a team in any more can still be looked at. */
	@Test
	void aStandingThatLosesItsOnlyRowStaysAPage() {
		SegmentId segment = this.day.segment(1);
		this.run.open(segment, SmallCompetition.REFEREE);
		withdrawn(this.entries.entry(starts().get(0).entry()));
		this.draw.draw(new StartingOrderDraw.Order(segment, DrawMethod.WHOLE_FIELD, "again", 4, "A team left."),
				SmallCompetition.REFEREE);
		String page = "/follow/" + this.day.competition().slug() + "/" + this.day.event().slug();
		String there = page + "/" + this.day.event().segments().get(0).slug();
		for (String address : List.of(page, there, there + "/order", there + "/standing", there + "/board")) {
			assertThat(anybody().open(address).status()).as(address).isIn(200, 404);
		}
		assertThat(anybody().open(there).status()).isEqualTo(200);
		assertThat(this.referee.open("/desk/results/" + segment).status()).isEqualTo(200);
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void aCallThatWasASlipLeavesTheChoice() {
		SegmentId segment = this.day.segment(1);
		this.run.open(segment, SmallCompetition.REFEREE);
		PerformanceView called = this.day.callNext(1);
		assertRefused("draw-too-late",
				() -> this.draw.draw(
						new StartingOrderDraw.Order(segment, DrawMethod.WHOLE_FIELD, "now", 4, "On the ice."),
						SmallCompetition.REFEREE));
		this.run.takeBack(called.id(), called.version(), SmallCompetition.REFEREE);
		this.draw.draw(new StartingOrderDraw.Order(segment, DrawMethod.WHOLE_FIELD, "later", 4, "It was a slip."),
				SmallCompetition.REFEREE);
		assertThat(this.day.performances(1)).extracting(PerformanceView::entry)
			.containsExactlyElementsOf(starts().stream().map(StartingOrderView.Start::entry).toList());
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void whoWithdrewByMistakeHasTheOldNumberUnlessItWasDrawnAgain() {
		EntryView second = this.entries.entry(starts().get(1).entry());
		back(withdrawn(second));
		assertThat(this.draw.late(this.day.segment(1))).isEmpty();
		assertThat(starts().get(1).entry()).isEqualTo(second.id());

		EntryView gone = withdrawn(this.entries.entry(second.id()));
		this.draw.draw(new StartingOrderDraw.Order(this.day.segment(1), DrawMethod.WHOLE_FIELD, "again", 4,
				"Read out wrongly."), SmallCompetition.REFEREE);
		assertThat(starts()).hasSize(3);
		back(gone);
		assertThat(this.draw.late(this.day.segment(1)).orElseThrow().first()).isEqualTo(4);
		this.draw.add(new StartingOrderDraw.Addition(this.day.segment(1), 2, "Its withdrawal was a mistake."),
				SmallCompetition.REFEREE);
		assertThat(starts().get(3).entry()).isEqualTo(second.id());
		assertRefused("nobody-to-add", () -> this.draw
			.add(new StartingOrderDraw.Addition(this.day.segment(1), 3, "Again."), SmallCompetition.REFEREE));
	}

	@Test
	void aWithdrawalLeavesTheAddedNumberEmptyAndTheNextOneFollows() {
		EntryId late = enter("Late Lights");
		add(1);
		withdrawn(this.entries.entry(late));
		EntryId later = enter("Later Lights");
		add(2);
		assertThat(starts()).extracting(StartingOrderView.Start::number).containsExactly(1, 2, 3, 4, 5, 6);
		assertThat(starts()).extracting(StartingOrderView.Start::entry).endsWith(late, later);
		this.run.open(this.day.segment(1), SmallCompetition.REFEREE);
		assertThat(this.day.performances(1).get(4).status()).isEqualTo(PerformanceStatus.WITHDRAWN);
	}

	private void add(int seen) {
		this.draw.add(new StartingOrderDraw.Addition(this.day.segment(1), seen, "Came late."),
				SmallCompetition.REFEREE);
	}

	private EntryView withdrawn(EntryView entry) {
		return this.entries.withdraw(entry.id(), entry.version(), "A misunderstanding.", SmallCompetition.SECRETARY);
	}

	private void back(EntryView gone) {
		this.entries.reinstate(gone.id(), gone.version(), "It was a mistake.", SmallCompetition.SECRETARY);
	}

	/** As the secretary does it. */
	private EntryId enter(String team) {
		Visitor.Page page = this.secretary.open("/desk/entries/" + this.day.event().id());
		assertThat(page.text()).contains("is drawn. Enter late teams one by one");
		Visitor.Page entered = page.submit("form.sheet",
				Map.of("team", team + " " + this.unique, "club", "Late Club " + this.unique, "town", "Skerrywick",
						"lateReason", "Forgotten by the office.", "another", "true"));
		assertThat(entered.status()).isEqualTo(200);
		return this.day.entries()
			.stream()
			.filter((entry) -> entry.team().name().equals(team + " " + this.unique))
			.findFirst()
			.orElseThrow()
			.id();
	}

	private String drawPage() {
		return "/desk/draw/" + this.day.segment(1);
	}

	private Visitor anybody() {
		return new Visitor(Integer.parseInt(this.context.getEnvironment().getRequiredProperty("local.server.port")));
	}

	private Visitor.Page publicOrder() {
		return anybody().open("/follow/" + this.day.competition().slug() + "/" + this.day.event().slug() + "/"
				+ this.day.event().segments().get(0).slug() + "/order");
	}

	private List<StartingOrderView.Start> starts() {
		return this.draw.ofSegment(this.day.segment(1)).orElseThrow().starts();
	}

	private void sign(SegmentId segment) {
		ResultPublication publication = this.context.getBean(ResultPublication.class);
		publication.post(segment, version(segment), SmallCompetition.ACCOUNTANT);
		publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, SmallCompetition.REFEREE);
		publication.sign(segment, version(segment), Signatories.Signatory.ACCOUNTANT, SmallCompetition.ACCOUNTANT);
	}

	private int version(SegmentId segment) {
		return this.standings.result(segment).orElseThrow().version();
	}

	private static void assertRefused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.extracting(RimebookException::code)
			.isEqualTo(code);
	}

}
