package rimebook.demo;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.DraftCompetition;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.draw.DrawMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.Entries;
import rimebook.entries.EntryImport;
import rimebook.panels.OfficialView;
import rimebook.panels.Panels;
import rimebook.panels.SeatKind;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.placement.MarkSubmission;
import rimebook.placement.MarksAmendment;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.results.ResultPublication;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.SegmentKind;

import static rimebook.demo.DemoCrew.ACCOUNTANT;
import static rimebook.demo.DemoCrew.REFEREE;
import static rimebook.demo.DemoCrew.SECRETARY;

/** Builds the invented competition through the doors that people use. */
@Component
@Profile("demo")
class DemoCompetition {

	static final String NAME = "Lantern Weekend";

	private final Competitions competitions;

	private final EntryImport entryImport;

	private final Entries entries;

	private final StartingOrderDraw draw;

	private final Panels panels;

	private final SegmentRun run;

	private final MarkSubmission submission;

	private final ResultPublication publication;

	private final Standings standings;

	private final Protests protests;

	private final Corrections corrections;

	private final PointsRehearsal points;

	private final DemoRulings rulings;

	DemoCompetition(Competitions competitions, EntryImport entryImport, Entries entries, StartingOrderDraw draw,
			Panels panels, SegmentRun run, MarkSubmission submission, ResultPublication publication,
			Standings standings, Protests protests, Corrections corrections, PointsRehearsal points,
			DemoRulings rulings) {
		this.competitions = competitions;
		this.entryImport = entryImport;
		this.entries = entries;
		this.draw = draw;
		this.panels = panels;
		this.run = run;
		this.submission = submission;
		this.publication = publication;
		this.standings = standings;
		this.protests = protests;
		this.corrections = corrections;
		this.points = points;
		this.rulings = rulings;
	}

	/** Tell whether it was built by an earlier start. */
	boolean isThere() {
		return this.competitions.all().stream().anyMatch((competition) -> competition.name().equals(NAME));
	}

	/** Which one it is, once it is there. */
	CompetitionId id() {
		return this.competitions.all()
			.stream()
			.filter((each) -> each.name().equals(NAME))
			.findFirst()
			.orElseThrow()
			.id();
	}

	/** The segments that the simulated panel marks, one after the other. */
	List<SegmentId> underWay() {
		return this.competitions.events(id())
			.stream()
			.filter((event) -> event.segments().size() > 1)
			.map((event) -> event.segments().get(1).id())
			.toList();
	}

	/** Build it from nothing. */
	void build() {
		CompetitionView made = this.competitions
			.create(new DraftCompetition(NAME, "Skerry Hall, Varnholm", ZoneId.of("Europe/Helsinki"),
					LocalDate.of(2027, 2, 13), LocalDate.of(2027, 2, 14), "Rulebook of the Skerry Islands, 2026/27"),
					SECRETARY);
		EventView junior = add(made, "Junior", JudgingMethod.MAJORITY, 7, List.of(shortProgramme(), free(210)));
		EventView adult = add(made, "Adult", JudgingMethod.ONE_BY_ONE, 5, List.of(free(180)));
		add(made, "Novice", JudgingMethod.MAJORITY, 5, List.of(free(180)));
		EventView senior = addSenior(made);
		move(made, CompetitionState.ENTRIES_OPEN);
		this.entryImport.apply(made.id(), DemoFiles.entries(), EntryImport.Answers.NONE, SECRETARY);
		move(made, CompetitionState.ENTRIES_CLOSED);
		move(made, CompetitionState.RUNNING);
		DemoFiles.officials().forEach((official) -> this.panels.register(official, REFEREE));
		seat(junior, 0);
		seat(adult, 9);
		seat(senior, 1);
		playAdult(adult);
		playJunior(junior);
		playSenior(senior);
		this.rulings.ask(junior, senior);
	}

	/** Signed at once, since the demonstration cannot wait for its own protests. */
	private EventView add(CompetitionView competition, String name, JudgingMethod method, int judges,
			List<DraftEvent.DraftSegment> segments) {
		return this.competitions.addEvent(competition.id(),
				new DraftEvent(name, DraftEvent.Judging.by(method, judges), segments).signedAtOnce(), SECRETARY);
	}

	private EventView addSenior(CompetitionView competition) {
		return this.competitions.addEvent(competition.id(), new DraftEvent("Senior",
				DraftEvent.Judging.byPoints(7, new DraftEvent.PointsChoice("synchronized-2025-26", "senior")),
				List.of(new DraftEvent.DraftSegment("Short programme", SegmentKind.SHORT, 100, 160, 10), free(240)))
			.signedAtOnce(), SECRETARY);
	}

	private static DraftEvent.DraftSegment shortProgramme() {
		return new DraftEvent.DraftSegment("Short programme", SegmentKind.SHORT, 50, 160, 10);
	}

	private static DraftEvent.DraftSegment free(int seconds) {
		return new DraftEvent.DraftSegment("Free skating", SegmentKind.FREE, 100, seconds, 10);
	}

	private void move(CompetitionView competition, CompetitionState next) {
		this.competitions.move(competition.id(), this.competitions.competition(competition.id()).version(), next,
				SECRETARY);
	}

	/**
	 * Seat the crew, who sign, and the other officials in the order of the register,
	 * leaving out who is of a team's club.
	 */
	private void seat(EventView event, int from) {
		List<OfficialView> register = this.panels.officials();
		List<OfficialView> others = register.stream().filter((official) -> !isCrew(official)).toList();
		Deque<OfficialView> free = new ArrayDeque<>(others.subList(from, others.size()));
		seat(event, SeatKind.REFEREE, 1, named(register, REFEREE));
		seat(event, SeatKind.ACCOUNTANT, 1, named(register, ACCOUNTANT));
		for (int number = 1; number <= event.judging().judges(); number++) {
			seat(event, SeatKind.JUDGE, number, free);
		}
		if (!event.isJudgedByPoints()) {
			seat(event, SeatKind.SUBSTITUTE, 1, free);
		}
		this.panels.issueCodes(event.id(), REFEREE);
	}

	private static boolean isCrew(OfficialView official) {
		return REFEREE.goesBy(official.name()) || ACCOUNTANT.goesBy(official.name());
	}

	private static Deque<OfficialView> named(List<OfficialView> register, Actor crew) {
		return register.stream()
			.filter((official) -> crew.goesBy(official.name()))
			.collect(Collectors.toCollection(ArrayDeque::new));
	}

	private void seat(EventView event, SeatKind kind, int number, Deque<OfficialView> free) {
		while (true) {
			try {
				this.panels.seat(new Panels.SeatOfficial(event.id(), kind, number, free.removeFirst().id(), ""),
						REFEREE);
				return;
			}
			catch (RuleViolationException ex) {
				// Of the club of a team in this event: the next one on the register sits.
			}
		}
	}

	/** Adult: finished, with a correction, a protest and both signatures. */
	private void playAdult(EventView adult) {
		SegmentView segment = adult.segments().get(0);
		play(adult, segment, DrawMethod.WHOLE_FIELD);
		post(segment.id());
		correct(segment.id(), adult);
		protest(segment.id(), adult);
		sign(segment.id());
	}

	private void playJunior(EventView junior) {
		SegmentView first = junior.segments().get(0);
		play(junior, first, DrawMethod.WHOLE_FIELD);
		post(first.id());
		sign(first.id());
		SegmentView free = junior.segments().get(1);
		order(free, DrawMethod.GROUPS_FROM_STANDING);
		this.run.open(free.id(), REFEREE);
	}

	/**
	 * Senior, judged by points: the short programme is over, the free skating is open.
	 */
	private void playSenior(EventView senior) {
		SegmentView first = senior.segments().get(0);
		DemoPerformances files = new DemoPerformances("short");
		this.points.plan(senior.id(), first.id(), files);
		this.points.plan(senior.id(), senior.segments().get(1).id(), new DemoPerformances("free"));
		order(first, DrawMethod.WHOLE_FIELD);
		this.run.open(first.id(), REFEREE);
		for (PerformanceView performance : this.run.performances(first.id())) {
			this.run.call(performance.id(), performance.version(), REFEREE);
			this.points.call(performance, files);
			this.points.authorise(performance);
			this.panels.judges(senior.id()).forEach((seat) -> this.points.send(performance, seat, files));
			this.run.close(performance.id(), this.run.performance(performance.id()).version(), REFEREE);
		}
		post(first.id());
		sign(first.id());
		SegmentView free = senior.segments().get(1);
		order(free, DrawMethod.GROUPS_FROM_STANDING);
		this.run.open(free.id(), REFEREE);
	}

	private void order(SegmentView segment, DrawMethod method) {
		this.draw.draw(new StartingOrderDraw.Order(segment.id(), method, "lantern-" + segment.slug(), 4, ""), REFEREE);
	}

	private void play(EventView event, SegmentView segment, DrawMethod method) {
		order(segment, method);
		this.run.open(segment.id(), REFEREE);
		for (PerformanceView performance : this.run.performances(segment.id())) {
			this.run.call(performance.id(), performance.version(), REFEREE);
			this.panels.judges(event.id()).forEach((seat) -> send(performance, seat, segment));
			this.run.close(performance.id(), this.run.performance(performance.id()).version(), REFEREE);
		}
	}

	/** Send a seat's card from inside. */
	void send(PerformanceView performance, SeatView seat, SegmentView segment) {
		String team = this.entries.entry(performance.entry()).team().name();
		CardMarks marks = PlausibleMarks.of(seat.number(), team, segment.name());
		this.submission.submit(new MarkSubmission.SubmitCard(UUID.randomUUID(), performance.id(), 1, marks), seat.id(),
				new Actor(seat.label(), "judge", "demo"));
	}

	private void correct(SegmentId segment, EventView event) {
		PerformanceView performance = this.run.performances(segment).get(2);
		SeatView seat = this.panels.judges(event.id()).get(3);
		CardMarks typed = PlausibleMarks.of(seat.number(), this.entries.entry(performance.entry()).team().name(),
				event.segments().get(0).name());
		CardMarks meant = new CardMarks(Math.min(600, typed.first() + 30), typed.second());
		CorrectionView proposed = this.corrections
			.propose(new Corrections.ProposeCorrection(MarksAmendment.on(performance.id(), seat.id(), meant),
					"The judge touched the key beside the one meant and said so in writing."), ACCOUNTANT);
		this.corrections.approve(proposed.id(), proposed.version(), REFEREE);
	}

	private void protest(SegmentId segment, EventView event) {
		ProtestView filed = this.protests.file(new Protests.FileProtest(segment,
				new ProtestView.Claim(this.entries.ofEvent(event.id()).get(4).id(),
						ProtestView.ProtestCategory.CALCULATION,
						"We believe that a win over the team before us is missing.", 0),
				"Mira Sund, team manager", null), SECRETARY);
		this.protests.decide(filed.id(), filed.version(), false,
				"All comparisons were gone through by hand with the manager; the wins are as published.", REFEREE);
	}

	private void post(SegmentId segment) {
		this.publication.post(segment, version(segment), ACCOUNTANT);
	}

	private void sign(SegmentId segment) {
		this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE);
		this.publication.sign(segment, version(segment), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
	}

	private int version(SegmentId segment) {
		return this.standings.result(segment).orElseThrow(() -> missing(segment)).version();
	}

	private static NotFoundException missing(SegmentId segment) {
		return NotFoundException.of("result", segment);
	}

}
