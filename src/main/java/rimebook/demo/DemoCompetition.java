package rimebook.demo;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

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
import rimebook.entries.EntryImport;
import rimebook.performances.PerformanceView;
import rimebook.rehearsal.PanelPlan;
import rimebook.rehearsal.PointsScript;
import rimebook.tabulation.SegmentKind;

import static rimebook.demo.DemoCrew.SECRETARY;

/** Builds the invented competition through the doors that people use. */
@Component
@Profile("demo")
class DemoCompetition implements PanelPlan {

	static final String NAME = "Lantern Weekend";

	private final Competitions competitions;

	private final EntryImport entryImport;

	private final DemoSeating seating;

	private final DemoSegments segments;

	private final DemoResults results;

	private final DemoObjections objections;

	private final DemoTimetable timetable;

	private final DemoCommentary commentary;

	private final DemoRosters rosters;

	private final DemoMusic music;

	private final DemoFees fees;

	private final DemoLetters letters;

	private final PointsScript free = new DemoPerformances("free");

	DemoCompetition(Competitions competitions, EntryImport entryImport, DemoSeating seating, DemoSegments segments,
			DemoResults results, DemoObjections objections, DemoTimetable timetable, DemoCommentary commentary,
			DemoRosters rosters, DemoMusic music, DemoFees fees, DemoLetters letters) {
		this.letters = letters;
		this.rosters = rosters;
		this.music = music;
		this.fees = fees;
		this.commentary = commentary;
		this.timetable = timetable;
		this.competitions = competitions;
		this.entryImport = entryImport;
		this.seating = seating;
		this.segments = segments;
		this.results = results;
		this.objections = objections;
	}

	/** Tell whether it was built by an earlier start. */
	boolean isThere() {
		return this.competitions.all().stream().anyMatch((competition) -> competition.name().equals(NAME));
	}

	/** The competition, once it is there. */
	CompetitionView view() {
		return this.competitions.all().stream().filter((each) -> each.name().equals(NAME)).findFirst().orElseThrow();
	}

	/** Which one it is, once it is there. */
	CompetitionId id() {
		return view().id();
	}

	/** The segments that are open at the start, one after the other. */
	@Override
	public List<SegmentId> segments() {
		return this.competitions.events(id())
			.stream()
			.filter((event) -> event.segments().size() > 1)
			.map((event) -> event.segments().get(1).id())
			.toList();
	}

	@Override
	public PointsScript script(PerformanceView performance) {
		return this.free;
	}

	/** Build it from nothing. */
	void build() {
		CompetitionView made = this.competitions
			.create(new DraftCompetition(NAME, "Skerry Hall, Varnholm", ZoneId.of("Europe/Helsinki"),
					LocalDate.of(2027, 2, 13), LocalDate.of(2027, 2, 14), "Rulebook of the Skerry Islands, 2026/27"),
					SECRETARY);
		EventView junior = add(made, "Junior", DraftEvent.Judging.by(JudgingMethod.MAJORITY, 7),
				List.of(shortProgramme(), free(210)));
		EventView adult = add(made, "Adult", DraftEvent.Judging.by(JudgingMethod.ONE_BY_ONE, 5), List.of(free(180)));
		EventView novice = add(made, "Novice", DraftEvent.Judging.by(JudgingMethod.MAJORITY, 5), List.of(free(180)));
		EventView senior = addSenior(made);
		move(made, CompetitionState.ENTRIES_OPEN);
		this.entryImport.apply(made.id(), DemoFiles.entries(), EntryImport.Answers.NONE, SECRETARY);
		List.of(junior, senior).forEach(this.commentary::tell);
		this.rosters.fill(made, junior, "international-junior", 13, 18);
		this.rosters.fill(made, adult, "adult", 18, 60);
		this.rosters.fill(made, novice, "international-novice", 10, 14);
		this.rosters.fill(made, senior, "international-senior", 17, 29);
		List.of(junior, senior).forEach(this.music::handIn);
		this.fees.charge(made, adult);
		move(made, CompetitionState.ENTRIES_CLOSED);
		move(made, CompetitionState.RUNNING);
		this.seating.register();
		this.seating.seat(junior, 0);
		this.seating.seat(adult, 9);
		this.seating.seat(senior, 1);
		playAdult(adult);
		playJunior(junior);
		playSenior(senior);
		this.objections.ask(junior, senior);
		this.timetable.publish(made.id());
		this.letters.write(made.id());
	}

	/** Signed at once, since the demonstration cannot wait for its own protests. */
	private EventView add(CompetitionView competition, String name, DraftEvent.Judging judging,
			List<DraftEvent.DraftSegment> segments) {
		return this.competitions.addEvent(competition.id(), new DraftEvent(name, judging, segments).signedAtOnce(),
				SECRETARY);
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

	/** Adult: finished, with a correction, a protest and both signatures. */
	private void playAdult(EventView adult) {
		SegmentView segment = adult.segments().get(0);
		this.segments.play(adult, segment, DrawMethod.WHOLE_FIELD);
		this.results.post(segment.id());
		this.objections.correct(segment.id(), adult);
		this.objections.protest(segment.id(), adult);
		this.results.sign(segment.id());
	}

	private void playJunior(EventView junior) {
		SegmentView first = junior.segments().get(0);
		this.segments.play(junior, first, DrawMethod.WHOLE_FIELD);
		this.results.post(first.id());
		this.results.sign(first.id());
		SegmentView free = junior.segments().get(1);
		this.segments.open(free, DrawMethod.GROUPS_FROM_STANDING);
	}

	/**
	 * Senior, judged by points: the short programme is over, the free skating is open.
	 */
	private void playSenior(EventView senior) {
		SegmentView first = senior.segments().get(0);
		this.segments.playByPoints(senior, first, senior.segments().get(1));
		this.results.post(first.id());
		this.results.sign(first.id());
		SegmentView free = senior.segments().get(1);
		this.segments.open(free, DrawMethod.GROUPS_FROM_STANDING);
	}

}
