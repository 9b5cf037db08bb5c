package rimebook.documents;

import java.util.List;

import org.springframework.context.ApplicationContext;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.competition.JudgingMethod;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.placement.MarksAmendment;
import rimebook.points.CalledListView;
import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.points.ListAuthorisations;
import rimebook.points.PointsJudge;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.results.ResultPublication;
import rimebook.results.ResultVersion;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.rulings.QuestionView;
import rimebook.rulings.RulingView;
import rimebook.rulings.Rulings;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.CalledElements;
import rimebook.testsupport.SmallCompetition;
import rimebook.timetable.BlockDraft;
import rimebook.timetable.PlanView;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.Timetables;
import rimebook.timetable.plan.Block;

/** A day of one segment on which everything happens that a sheet can tell of. */
final class PaperDay {

	final SmallCompetition small;

	private final ApplicationContext context;

	private PaperDay(ApplicationContext context, SmallCompetition small) {
		this.context = context;
		this.small = small;
	}

	/**
	 * Five teams marked by five judges, the first two alike, the last one not to the end.
	 */
	static PaperDay placement(ApplicationContext context) {
		PaperDay day = new PaperDay(context,
				SmallCompetition.running(context, 5,
						new DraftEvent("Junior", DraftEvent.Judging.by(JudgingMethod.MAJORITY, 5),
								List.of(CompetitionFixtures.aFree()))
							.signedAtOnce()));
		day.small.open(1);
		for (int team = 0; team < 4; team++) {
			day.mark(new CardMarks(560 - 30 * Math.max(1, team), 570));
		}
		PerformanceView last = day.small.callNext(1);
		day.the(SegmentRun.class)
			.end(last.id(), last.version(), PerformanceStatus.NOT_FINISHED, "A blade broke", SmallCompetition.REFEREE);
		return day;
	}

	/** The same marks by every judge. */
	private void mark(CardMarks marks) {
		PerformanceView performance = this.small.callNext(1);
		this.small.seats().forEach((seat) -> this.small.send(performance, seat, 1, marks));
		this.small.close(performance);
	}

	/** Three teams judged by points, with a fall and an element that has no value. */
	static PaperDay points(ApplicationContext context) {
		PaperDay day = new PaperDay(context,
				SmallCompetition.running(context, 3, CompetitionFixtures.aPointsEvent("Senior", 5)));
		day.small.open(1);
		for (int team = 0; team < 3; team++) {
			day.judge(team);
		}
		return day;
	}

	private void judge(int team) {
		PerformanceView performance = this.small.callNext(1);
		CalledElements desk = new CalledElements(this.context, performance);
		desk.call("I4+pi3", "ME4", "TwE3");
		desk.devalue(3);
		CalledListView list = the(ElementCalls.class).ofPerformance(performance.id()).orElseThrow();
		for (SeatView seat : this.small.seats()) {
			PointsJudge.send(this.context, performance, seat, list, (seat.number() * 2 + team) % 6 - 2);
		}
		the(ListAuthorisations.class).authorise(performance.id(), list.sequence(), SmallCompetition.ACCOUNTANT);
		if (team == 0) {
			the(DeductionNotes.class).note(new DeductionNotes.NoteDeductions(performance.id(), 1,
					List.of(new DeductionNotes.NoteDeductions.Item("fall", 2))), SmallCompetition.ACCOUNTANT);
		}
		this.small.close(performance);
	}

	/** Publish a timetable. */
	void plan() {
		the(Timetables.class).fill(this.small.competition().id(), 0, SmallCompetition.REFEREE);
		the(TimetableVersions.class).publish(this.small.competition().id(), 1, "", SmallCompetition.REFEREE);
	}

	/** Plan the days and write who hands over at the event's ceremony; publish that. */
	void handOver(String hands) {
		PlanView plan = the(Timetables.class).fill(this.small.competition().id(), 0, SmallCompetition.REFEREE);
		Block ceremony = plan.plan()
			.blocks()
			.stream()
			.filter((block) -> block.kind() == Block.Kind.CEREMONY)
			.findFirst()
			.orElseThrow();
		the(Timetables.class).change(this.small.competition().id(), 1, ceremony.id(),
				new BlockDraft(ceremony.place(), ceremony.kind(), "", 900, ceremony.timing(), ceremony.part(), hands),
				SmallCompetition.SECRETARY);
		the(TimetableVersions.class).publish(this.small.competition().id(), 2, "", SmallCompetition.REFEREE);
	}

	/** Post the result. */
	void post() {
		the(ResultPublication.class).post(this.small.segment(1), seen(), SmallCompetition.REFEREE);
	}

	/** Post and sign it. */
	void sign() {
		post();
		ResultPublication publication = the(ResultPublication.class);
		publication.sign(this.small.segment(1), seen(), Signatories.Signatory.REFEREE, SmallCompetition.REFEREE);
		publication.sign(this.small.segment(1), seen(), Signatories.Signatory.ACCOUNTANT, SmallCompetition.ACCOUNTANT);
	}

	/** Open the signed result again. */
	void reopen() {
		the(ResultPublication.class).reopen(this.small.segment(1), seen(), "A mark was mistyped",
				SmallCompetition.REFEREE);
	}

	private int seen() {
		return the(Standings.class).result(this.small.segment(1)).orElseThrow().version();
	}

	/** Ask for a ruling and give it. */
	void rule() {
		Rulings rulings = the(Rulings.class);
		QuestionView question = rulings.ask(new Rulings.AskQuestion(this.small.entries().get(0).id(), null,
				QuestionView.RulingTopic.PROP, "May we carry lanterns?", "Mira Sund"), SmallCompetition.SECRETARY);
		rulings.rule(new Rulings.GiveRuling(question.id(), 0,
				new RulingView.Answer(RulingView.Verdict.ALLOWED, "", "They stay in the hands.", "Rule 7", true), ""),
				SmallCompetition.REFEREE);
	}

	/**
	 * Uphold a protest about the last team that skated, whose first mark is corrected.
	 */
	void protest() {
		the(Protests.class).file(
				new Protests.FileProtest(this.small.segment(1), new ProtestView.Claim(this.small.entries().get(0).id(),
						ProtestView.ProtestCategory.CALCULATION, "A sum is wrong.", 0), "Mira Sund", null),
				SmallCompetition.ACCOUNTANT);
		the(Protests.class).ofSegment(this.small.segment(1))
			.forEach((protest) -> the(Protests.class).decide(protest.id(), protest.version(), true,
					"It was keyed in wrongly.", SmallCompetition.REFEREE));
		List<SeatView> seats = this.small.seats();
		for (SeatView seat : seats.subList(0, 3)) {
			the(Corrections.class)
				.propose(
						new Corrections.ProposeCorrection(MarksAmendment.on(this.small.performances(1).get(3).id(),
								seat.id(), new CardMarks(590, 590)), "Typed one key off."),
						SmallCompetition.ACCOUNTANT);
			the(Corrections.class).ofSegment(this.small.segment(1))
				.stream()
				.filter((correction) -> correction.decision().state() == CorrectionView.State.PROPOSED)
				.forEach((correction) -> the(Corrections.class).approve(correction.id(), correction.version(),
						SmallCompetition.REFEREE));
		}
	}

	/** The newest standing of the segment. */
	ResultVersion segment() {
		return the(Standings.class).latest(this.small.segment(1)).orElseThrow();
	}

	/** The newest standing of the event. */
	ResultVersion event() {
		return the(Standings.class).latest(this.small.event().id()).orElseThrow();
	}

	/** The document of that kind that is offered now. */
	DocumentRef ref(DocumentKind kind) {
		return the(Documents.class).offered(this.small.event())
			.stream()
			.filter((ref) -> ref.kind() == kind)
			.findFirst()
			.orElseThrow(() -> new AssertionError(kind + " is not offered"));
	}

	private <T> T the(Class<T> facade) {
		return this.context.getBean(facade);
	}

}
