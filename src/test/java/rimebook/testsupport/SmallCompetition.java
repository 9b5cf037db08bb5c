package rimebook.testsupport;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;

import org.springframework.context.ApplicationContext;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.draw.DrawMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.EnterTeam;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.panels.DraftOfficial;
import rimebook.panels.OfficialView;
import rimebook.panels.Panels;
import rimebook.panels.SeatKind;
import rimebook.panels.SeatView;
import rimebook.performances.CardBook;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.placement.MarkSubmission;
import rimebook.points.CalledListView;
import rimebook.points.ElementCalls;
import rimebook.points.ListAuthorisations;
import rimebook.points.PointsJudge;
import rimebook.shared.Actor;
import rimebook.tabulation.CardMarks;

/**
 * A small placement-judged competition with one event of two segments, built through the
 * public facades as people build it through the pages. Every one is named differently, so
 * that tests can share a database.
 */
public final class SmallCompetition {

	/** A secretary at a laptop. */
	public static final Actor SECRETARY = CompetitionFixtures.SECRETARY;

	/** The referee of the event. */
	public static final Actor REFEREE = new Actor("Runa Hale", "referee", "test");

	/** The accountant of the event. */
	public static final Actor ACCOUNTANT = new Actor("Bo Tally", "accountant", "test");

	private static final AtomicInteger COUNT = new AtomicInteger();

	private final ApplicationContext context;

	private final EventId event;

	private final Random random = new Random(20270213);

	private SmallCompetition(ApplicationContext context, EventId event) {
		this.context = context;
		this.event = event;
	}

	/** Build a running majority competition with a complete panel and both orders due. */
	public static SmallCompetition running(ApplicationContext context, int teams, int judges) {
		return running(context, teams, CompetitionFixtures.anEvent("Junior", judges));
	}

	/** Build a running competition with that event. */
	public static SmallCompetition running(ApplicationContext context, int teams, DraftEvent draft) {
		return upTo(CompetitionState.RUNNING, context, teams, draft);
	}

	/**
	 * Build a competition with that event and move it on to a state, at most running;
	 * while it is planned nobody can be entered.
	 */
	public static SmallCompetition upTo(CompetitionState last, ApplicationContext context, int teams,
			DraftEvent draft) {
		int number = COUNT.incrementAndGet();
		Competitions competitions = context.getBean(Competitions.class);
		CompetitionView made = competitions
			.create(CompetitionFixtures.aCompetition("Frost Trial " + number + " " + UUID.randomUUID()), SECRETARY);
		EventView event = competitions.addEvent(made.id(), draft, SECRETARY);
		SmallCompetition competition = new SmallCompetition(context, event.id());
		if (last != CompetitionState.PLANNED) {
			competition.move(CompetitionState.ENTRIES_OPEN);
			competition.enter(1, teams);
		}
		List.of(CompetitionState.ENTRIES_CLOSED, CompetitionState.RUNNING)
			.stream()
			.filter((state) -> state.compareTo(last) <= 0)
			.forEach(competition::move);
		competition.seatPanel(draft.judging().judges());
		return competition;
	}

	/**
	 * Build a running competition with these events, each of so many teams that have
	 * their names to themselves, and with one referee and one accountant for all.
	 */
	public static List<SmallCompetition> running(ApplicationContext context, int teams, List<DraftEvent> drafts) {
		Competitions competitions = context.getBean(Competitions.class);
		CompetitionView made = competitions.create(CompetitionFixtures.aCompetition("Frost Days " + UUID.randomUUID()),
				SECRETARY);
		List<SmallCompetition> events = drafts.stream()
			.map((draft) -> new SmallCompetition(context, competitions.addEvent(made.id(), draft, SECRETARY).id()))
			.toList();
		events.get(0).move(CompetitionState.ENTRIES_OPEN);
		for (int i = 0; i < events.size(); i++) {
			events.get(i).enter(1 + i * teams, (i + 1) * teams);
			events.get(i).seatPanel(drafts.get(i).judging().judges());
		}
		events.get(0).move(CompetitionState.ENTRIES_CLOSED);
		events.get(0).move(CompetitionState.RUNNING);
		return events;
	}

	private void enter(int first, int last) {
		for (int i = first; i <= last; i++) {
			this.context.getBean(Entries.class)
				.enter(new EnterTeam(this.event, "Club " + i, "Town " + i, "Team " + i, "", ""), SECRETARY);
		}
	}

	private void seatPanel(int judges) {
		seatInstead(SeatKind.REFEREE, REFEREE.name());
		seatInstead(SeatKind.ACCOUNTANT, ACCOUNTANT.name());
		for (int i = 1; i <= judges; i++) {
			seat(SeatKind.JUDGE, i);
		}
	}

	private void seat(SeatKind kind, int number) {
		Panels panels = this.context.getBean(Panels.class);
		OfficialView.Id official = panels
			.register(new DraftOfficial(kind + " " + number + " " + UUID.randomUUID(), "", "national"), REFEREE)
			.id();
		panels.seat(new Panels.SeatOfficial(this.event, kind, number, official, ""), REFEREE);
	}

	/** Give the first seat of a kind to whoever is called that, from whoever has it. */
	public void seatInstead(SeatKind kind, String name) {
		vacate(kind);
		Panels panels = this.context.getBean(Panels.class);
		OfficialView official = panels.officials()
			.stream()
			.filter((known) -> known.name().equals(name))
			.findFirst()
			.orElseGet(() -> panels.register(new DraftOfficial(name, "", "national"), REFEREE));
		panels.seat(new Panels.SeatOfficial(this.event, kind, 1, official.id(), ""), REFEREE);
	}

	/** Give every seat that has to be taken and is not to somebody. */
	public void seatRest() {
		this.context.getBean(Panels.class).missing(this.event).forEach((place) -> seat(place.kind(), place.number()));
	}

	/** Take the seats of a kind from those who have them. */
	public void vacate(SeatKind kind) {
		Panels panels = this.context.getBean(Panels.class);
		panels.ofEvent(this.event)
			.seats()
			.stream()
			.filter((seat) -> seat.kind() == kind && seat.official() != null)
			.forEach((seat) -> panels.vacate(seat.id(), seat.version(), REFEREE));
	}

	/** Give somebody the substitute's seat. */
	public SeatView seatSubstitute() {
		seat(SeatKind.SUBSTITUTE, 1);
		return this.context.getBean(Panels.class)
			.withCard(this.event)
			.stream()
			.filter((seat) -> seat.kind() == SeatKind.SUBSTITUTE)
			.findFirst()
			.orElseThrow();
	}

	/** Move the competition on. */
	public void move(CompetitionState next) {
		Competitions competitions = this.context.getBean(Competitions.class);
		CompetitionView now = competition();
		competitions.move(now.id(), now.version(), next, SECRETARY);
	}

	/** The same competition, as another service that has it sees it. */
	public SmallCompetition at(ApplicationContext service) {
		return new SmallCompetition(service, this.event);
	}

	/** The competition as it is now. */
	public CompetitionView competition() {
		return this.context.getBean(Competitions.class).competition(event().competition());
	}

	/** The event as it is now. */
	public EventView event() {
		return this.context.getBean(Competitions.class).event(this.event);
	}

	/** The segment of that position, from 1. */
	public SegmentId segment(int position) {
		return event().segments().get(position - 1).id();
	}

	/** The entries by team name. */
	public List<EntryView> entries() {
		return this.context.getBean(Entries.class).ofEvent(this.event);
	}

	/** The counting seats in order. */
	public List<SeatView> seats() {
		return this.context.getBean(Panels.class).judges(this.event);
	}

	/** Draw the segment's starting order from a seed and open it. */
	public SegmentId open(int position) {
		SegmentId segment = segment(position);
		draw(position);
		this.context.getBean(SegmentRun.class).open(segment, REFEREE);
		return segment;
	}

	/** Draw the segment's starting order from a seed. */
	public void draw(int position) {
		DrawMethod method = (position == 1) ? DrawMethod.WHOLE_FIELD : DrawMethod.GROUPS_FROM_STANDING;
		this.context.getBean(StartingOrderDraw.class)
			.draw(new StartingOrderDraw.Order(segment(position), method, "seed " + position, 4, ""), REFEREE);
	}

	/** The performances of a segment by starting number. */
	public List<PerformanceView> performances(int position) {
		return this.context.getBean(SegmentRun.class).performances(segment(position));
	}

	/** Call the next team that waits. */
	public PerformanceView callNext(int position) {
		PerformanceView next = this.context.getBean(SegmentRun.class).next(segment(position)).orElseThrow();
		this.context.getBean(SegmentRun.class).call(next.id(), next.version(), REFEREE);
		return now(next);
	}

	/** Send a card of a seat. */
	public CardBook.Acknowledgement send(PerformanceView performance, SeatView seat, int sequence, CardMarks marks) {
		return send(new MarkSubmission.SubmitCard(UUID.randomUUID(), performance.id(), sequence, marks), seat);
	}

	/** Send that very card of a seat. */
	public CardBook.Acknowledgement send(MarkSubmission.SubmitCard card, SeatView seat) {
		return this.context.getBean(MarkSubmission.class)
			.submit(card, seat.id(), new Actor(seat.label(), "judge", "test"));
	}

	/** Let every seat send some marks, the same in every run. */
	public List<CardMarks> sendAll(PerformanceView performance) {
		List<CardMarks> cards = new ArrayList<>();
		for (SeatView seat : seats()) {
			CardMarks marks = new CardMarks(10 * (35 + this.random.nextInt(20)), 10 * (35 + this.random.nextInt(20)));
			send(performance, seat, 1, marks);
			cards.add(marks);
		}
		return cards;
	}

	/** Close the cards of a performance. */
	public void close(PerformanceView performance) {
		this.context.getBean(SegmentRun.class).close(performance.id(), now(performance).version(), REFEREE);
	}

	/** The performance as it is now. */
	public PerformanceView now(PerformanceView performance) {
		return this.context.getBean(SegmentRun.class).performance(performance.id());
	}

	/**
	 * Call, mark and close the next team; returns the cards in seat order, none in points
	 * judging.
	 */
	public List<CardMarks> skateNext(int position) {
		PerformanceView performance = callNext(position);
		List<CardMarks> cards = event().isJudgedByPoints() ? List.of() : sendAll(performance);
		if (event().isJudgedByPoints()) {
			judgeByPoints(performance);
		}
		close(performance);
		return cards;
	}

	private void judgeByPoints(PerformanceView performance) {
		new CalledElements(this.context, performance).call("I4+pi3", "ME4");
		CalledListView list = this.context.getBean(ElementCalls.class).ofPerformance(performance.id()).orElseThrow();
		for (SeatView seat : seats()) {
			PointsJudge.send(this.context, performance, seat, list, this.random.nextInt(11) - 5);
		}
		this.context.getBean(ListAuthorisations.class).authorise(performance.id(), list.sequence(), ACCOUNTANT);
	}

	/** Skate all that wait. */
	public void skateRest(int position) {
		while (performances(position).stream().anyMatch((one) -> one.status() == PerformanceStatus.WAITING)) {
			skateNext(position);
		}
	}

}
