package rimebook.draw;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import jakarta.persistence.EntityManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.data.jpa.test.autoconfigure.DataJpaTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.EnterTeam;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.Renaming;
import rimebook.entries.TeamView;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.shared.RimebookException;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

@DataJpaTest(showSql = false)
@Import(DrawModule.class)
@RecordApplicationEvents
class StartingOrderDrawIntegrationTests {

	private static final Actor REFEREE = new Actor("Ines Harrow", "referee", "test");

	@Autowired
	private StartingOrderDraw draw;

	@Autowired
	private Competitions competitions;

	@Autowired
	private Entries entries;

	@Autowired
	private Renaming renaming;

	@Autowired
	private Outcome outcome;

	@Autowired
	private Opening opening;

	@Autowired
	private EntityManager entityManager;

	@Autowired
	private ApplicationEvents published;

	private CompetitionView competition;

	private EventView event;

	private SegmentId first;

	private SegmentId later;

	@BeforeEach
	void enterTeams() {
		this.competition = this.competitions.create(CompetitionFixtures.aCompetition("Frostlight Trophy"), REFEREE);
		this.event = this.competitions.addEvent(this.competition.id(), CompetitionFixtures.anEvent("Junior", 7),
				REFEREE);
		this.first = this.event.segments().get(0).id();
		this.later = this.event.segments().get(1).id();
		move(CompetitionState.ENTRIES_OPEN);
		IntStream.rangeClosed(1, 8).forEach((number) -> enter("Team " + number));
	}

	@AfterEach
	void forgetStandIns() {
		this.outcome.standing = List.of();
		this.opening.open = null;
	}

	@Test
	void drawsTheWholeFieldOnceEntriesAreClosed() {
		move(CompetitionState.ENTRIES_CLOSED);
		StartingOrderView drawn = drawFirst("seed", "");
		assertThat(drawn.number()).isEqualTo(1);
		assertThat(drawn.seed()).isEqualTo("seed");
		assertThat(drawn.act().drawnBy()).isEqualTo("Ines Harrow");
		assertThat(drawn.act().drawnAt()).isEqualTo(DrawModule.NOW);
		assertThat(drawn.starts()).extracting(StartingOrderView.Start::number).containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
		assertThat(drawn.starts()).extracting(StartingOrderView.Start::group).containsExactly(1, 1, 2, 2, 2, 3, 3, 3);
		assertThat(drawn.starts()).extracting(StartingOrderView.Start::entry)
			.containsExactlyInAnyOrderElementsOf(field());
	}

	@Test
	void whatIsReadBackIsWhatWasDrawn() {
		move(CompetitionState.ENTRIES_CLOSED);
		StartingOrderView drawn = drawFirst("seed", "");
		this.entityManager.flush();
		this.entityManager.clear();
		assertThat(this.draw.ofSegment(this.first)).contains(drawn);
	}

	@Test
	void positionsFollowTheTicketsOfTheNames() {
		move(CompetitionState.ENTRIES_CLOSED);
		StartingOrderView drawn = drawFirst("seed", "");
		assertThat(drawn.starts()).allSatisfy((start) -> {
			String team = this.entries.entry(start.entry()).team().name();
			assertThat(start.ticket())
				.isEqualTo(DrawTicket.of("seed", "Short programme", team, "Harbour Blades").hex());
		});
		assertThat(drawn.starts()).extracting(StartingOrderView.Start::ticket).isSorted();
	}

	@Test
	void aNameMendedAfterTheDrawLeavesEveryTicketToBeRepeated() {
		move(CompetitionState.ENTRIES_CLOSED);
		StartingOrderView drawn = drawFirst("seed", "");
		TeamView team = this.entries.entry(drawn.starts().get(0).entry()).team();
		this.renaming.change(new Renaming.ChangeTeam(team.id(), 0, "Mended " + team.name(), ""), REFEREE);
		this.renaming.change(new Renaming.ChangeClub(team.club().id(), this.renaming.club(team.club().id()).version(),
				"Mended Club", "Elsewhere", ""), REFEREE);
		this.entityManager.flush();
		this.entityManager.clear();
		assertThat(this.entries.entry(drawn.starts().get(0).entry()).team().name()).startsWith("Mended");
		StartingOrderView read = this.draw.ofSegment(this.first).orElseThrow();
		assertThat(read).isEqualTo(drawn);
		assertThat(read.starts())
			.allSatisfy((start) -> assertThat(new DrawTicket(start.digested()).hex()).isEqualTo(start.ticket()));
		assertThat(read.starts().get(0).digested())
			.isEqualTo("seed|Short programme|" + team.name() + "|Harbour Blades");
	}

	@Test
	void makesASeedWhereNoneIsGiven() {
		move(CompetitionState.ENTRIES_CLOSED);
		String seed = drawFirst("  ", "").seed();
		assertThat(seed).matches("[0-9a-f]{16}");
		assertThat(drawFirst("", "again").seed()).matches("[0-9a-f]{16}").isNotEqualTo(seed);
	}

	@Test
	void refusesToDrawWhileEntriesAreOpen() {
		assertRefused("draw-not-now", () -> drawFirst("seed", ""));
		assertThat(this.draw.offer(this.first).refusal()).asString()
			.contains("entries open", "after the entries are closed");
	}

	@Test
	void refusesToDrawNobody() {
		this.entries.ofEvent(this.event.id()).forEach(this::withdraw);
		move(CompetitionState.ENTRIES_CLOSED);
		assertRefused("draw-no-entries", () -> drawFirst("seed", ""));
	}

	@Test
	void refusesTheStandingForTheFirstSegment() {
		move(CompetitionState.ENTRIES_CLOSED);
		assertRefused("draw-method-not-fitting",
				() -> draw(this.first, DrawMethod.GROUPS_FROM_STANDING, "seed", 6, ""));
		assertThat(this.draw.offer(this.first).methods()).containsExactly(DrawMethod.WHOLE_FIELD);
	}

	@Test
	void refusesOnceTheSegmentIsOpen() {
		move(CompetitionState.ENTRIES_CLOSED);
		this.opening.open = this.first;
		assertRefused("draw-too-late", () -> drawFirst("seed", ""));
	}

	@Test
	void drawsAgainOnlyWithAReasonAndKeepsEveryOrder() {
		move(CompetitionState.ENTRIES_CLOSED);
		StartingOrderView original = drawFirst("seed", "");
		assertRefused("draw-reason-missing", () -> drawFirst("other", " "));
		StartingOrderView again = drawFirst("other", "Wrong list was read out");
		assertThat(again.number()).isEqualTo(2);
		assertThat(again.act().reason()).isEqualTo("Wrong list was read out");
		assertThat(this.draw.ofSegment(this.first)).contains(again);
		assertThat(this.draw.everDrawn(this.first)).containsExactly(again, original);
	}

	@Test
	void withdrawalLeavesItsGap() {
		move(CompetitionState.ENTRIES_CLOSED);
		StartingOrderView drawn = drawFirst("seed", "");
		withdraw(this.entries.entry(drawn.starts().get(2).entry()));
		assertThat(this.draw.ofSegment(this.first)).contains(drawn);
	}

	@Test
	void leavesOutWhoWithdrewBeforeTheDraw() {
		EntryView gone = this.entries.ofEvent(this.event.id()).get(0);
		withdraw(gone);
		move(CompetitionState.ENTRIES_CLOSED);
		assertThat(drawFirst("seed", "").starts()).hasSize(7)
			.extracting(StartingOrderView.Start::entry)
			.doesNotContain(gone.id());
	}

	@Test
	void laterSegmentGoesByTheStandingBestGroupLast() {
		move(CompetitionState.ENTRIES_CLOSED);
		List<EntryId> standing = field();
		this.outcome.standing = ranked(standing);
		StartingOrderView drawn = draw(this.later, DrawMethod.GROUPS_FROM_STANDING, "seed", 3, "");
		assertThat(entriesOf(drawn, 1)).containsExactlyInAnyOrderElementsOf(standing.subList(6, 8));
		assertThat(entriesOf(drawn, 2)).containsExactlyInAnyOrderElementsOf(standing.subList(3, 6));
		assertThat(entriesOf(drawn, 3)).containsExactlyInAnyOrderElementsOf(standing.subList(0, 3));
	}

	@Test
	void laterSegmentLeavesOutWhoIsNotInTheStandingAndWhoWithdrew() {
		move(CompetitionState.ENTRIES_CLOSED);
		List<EntryId> standing = field();
		this.outcome.standing = ranked(standing.subList(0, 6));
		withdraw(this.entries.entry(standing.get(0)));
		StartingOrderView drawn = draw(this.later, DrawMethod.REVERSE_STANDING, "seed", 6, "");
		assertThat(drawn.starts()).extracting(StartingOrderView.Start::entry)
			.containsExactly(standing.get(5), standing.get(4), standing.get(3), standing.get(2), standing.get(1));
	}

	@Test
	void laterSegmentWaitsForTheOneBefore() {
		move(CompetitionState.ENTRIES_CLOSED);
		assertRefused("standing-incomplete", () -> draw(this.later, DrawMethod.GROUPS_FROM_STANDING, "seed", 6, ""));
		assertThat(this.draw.offer(this.later).refusal()).hasToString("The segment before is not complete.");
		assertThat(this.draw.offer(this.later).methods()).startsWith(DrawMethod.GROUPS_FROM_STANDING).hasSize(3);
	}

	@Test
	void aTeamThatComesAfterTheDrawWaitsForTheReferee() {
		move(CompetitionState.ENTRIES_CLOSED);
		StartingOrderView drawn = drawFirst("seed", "");
		assertThat(this.draw.late(this.first)).isEmpty();
		enter("Late Lights", "Forgotten by the office");
		assertThat(this.draw.ofSegment(this.first)).contains(drawn);
		StartingOrderDraw.LateTeams late = this.draw.late(this.first).orElseThrow();
		assertThat(late.teams()).containsExactly("Late Lights");
		assertThat(late.first()).isEqualTo(9);
		assertThat(late.group()).isEqualTo(3);
		assertThat(late.inGroup()).isEqualTo(4);
		assertThat(late.isLarge()).isTrue();
		assertThat(late.refusal()).isNull();
		assertRefused("stale-version", () -> add(2));
		StartingOrderView longer = add(1);
		assertThat(longer.starts().subList(0, 8)).isEqualTo(drawn.starts());
		assertThat(longer.starts().get(8)).satisfies((start) -> {
			assertThat(start.number()).isEqualTo(9);
			assertThat(start.group()).isEqualTo(3);
			assertThat(longer.isAdded(9)).isTrue();
			assertThat(longer.isAdded(8)).isFalse();
		});
		assertThat(this.draw.everDrawn(this.first)).containsExactly(longer, drawn);
		assertThat(this.draw.late(this.first)).isEmpty();
		assertRefused("nobody-to-add", () -> add(2));
		assertThat(this.published.stream(StartingOrderDraw.Drawn.class)).last().satisfies((told) -> {
			assertThat(told.change().action()).isEqualTo("starting-order.added-to");
			assertThat(told.change().after()).contains("order 2", "9 Late Lights (Harbour Blades)");
		});
	}

	private StartingOrderView add(int seen) {
		return this.draw.add(new StartingOrderDraw.Addition(this.first, seen, "Form lost"), REFEREE);
	}

	@Test
	void nobodyIsAddedOnceTheSegmentRunsOrALaterOneIsDrawn() {
		move(CompetitionState.ENTRIES_CLOSED);
		drawFirst("seed", "");
		enter("Late Lights", "Forgotten by the office");
		this.opening.open = this.first;
		assertRefused("draw-too-late", () -> add(1));
		assertThat(this.draw.late(this.first).orElseThrow().refusal()).hasToString("The segment is open.");
		this.opening.open = null;
		add(1);
		this.outcome.standing = ranked(field());
		draw(this.later, DrawMethod.GROUPS_FROM_STANDING, "seed", 3, "");
		assertRefused("entry-refused", () -> enter("Later Lights", "Forgotten by the office"));
	}

	@Test
	void nothingOfTheEventChangesAfterTheDraw() {
		move(CompetitionState.ENTRIES_CLOSED);
		drawFirst("seed", "");
		assertRefused("event-change", () -> this.competitions.changeEvent(this.event.id(), this.event.version(),
				this.event.draft().named("Junior A"), REFEREE));
	}

	@Test
	void beforeTheDrawLateEntriesAndChangesArePossible() {
		move(CompetitionState.ENTRIES_CLOSED);
		enter("Late Lights", "Forgotten by the office");
		this.competitions.changeEvent(this.event.id(), this.event.version(), this.event.draft().named("Junior A"),
				REFEREE);
		assertThat(drawFirst("seed", "").starts()).hasSize(9);
	}

	@Test
	void putsEveryDrawOnTheRecord() {
		move(CompetitionState.ENTRIES_CLOSED);
		drawFirst("seed", "");
		drawFirst("other", "Wrong list was read out");
		assertThat(this.published.stream(StartingOrderDraw.Drawn.class)).satisfiesExactly((drawn) -> {
			assertThat(drawn.change().action()).isEqualTo("starting-order.drawn");
			assertThat(drawn.change().after()).contains("order 1", "seed seed", "1 Team", "(Harbour Blades)");
		}, (redrawn) -> {
			assertThat(redrawn.number()).isEqualTo(2);
			assertThat(redrawn.change().action()).isEqualTo("starting-order.redrawn");
			assertThat(redrawn.change().before()).contains("order 1");
			assertThat(redrawn.change().reason()).isEqualTo("Wrong list was read out");
		});
	}

	@Test
	void saysWhatIsNotThere() {
		SegmentId nowhere = SegmentId.of("00000000-0000-7000-8000-000000000000");
		assertThatExceptionOfType(NotFoundException.class).isThrownBy(() -> this.draw.offer(nowhere));
		assertThat(this.draw.ofSegment(nowhere)).isEmpty();
	}

	private StartingOrderView drawFirst(String seed, String reason) {
		return draw(this.first, DrawMethod.WHOLE_FIELD, seed, 3, reason);
	}

	private StartingOrderView draw(SegmentId segment, DrawMethod method, String seed, int maximum, String reason) {
		return this.draw.draw(new StartingOrderDraw.Order(segment, method, seed, maximum, reason), REFEREE);
	}

	private void move(CompetitionState next) {
		this.competition = this.competitions.move(this.competition.id(), this.competition.version(), next, REFEREE);
	}

	private void enter(String team) {
		enter(team, "");
	}

	private void enter(String team, String lateReason) {
		this.entries.enter(new EnterTeam(this.event.id(), "Harbour Blades", "Skerrywick", team, "", lateReason),
				REFEREE);
	}

	private void withdraw(EntryView entry) {
		this.entries.withdraw(entry.id(), entry.version(), "Injury", REFEREE);
	}

	private List<EntryId> field() {
		return this.entries.ofEvent(this.event.id()).stream().map(EntryView::id).collect(Collectors.toList());
	}

	private static List<StandingBefore.Ranked> ranked(List<EntryId> standing) {
		return IntStream.range(0, standing.size())
			.mapToObj((i) -> new StandingBefore.Ranked(standing.get(i), i + 1))
			.toList();
	}

	private static List<EntryId> entriesOf(StartingOrderView order, int group) {
		return order.starts()
			.stream()
			.filter((start) -> start.group() == group)
			.map(StartingOrderView.Start::entry)
			.toList();
	}

	private static void assertRefused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.extracting(RimebookException::code)
			.isEqualTo(code);
	}

}
