package rimebook.crawl;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;

import org.springframework.context.ApplicationContext;

import rimebook.clock.PerformanceClock;
import rimebook.entries.EntryId;
import rimebook.performances.CardReopening;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.points.CalledListView;
import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.points.ListAuthorisations;
import rimebook.points.PointsJudge;
import rimebook.results.ResultPublication;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.rulings.QuestionView;
import rimebook.rulings.RulingView;
import rimebook.rulings.Rulings;
import rimebook.shared.Actor;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.points.JudgedElement;
import rimebook.testsupport.SmallCompetition;

/** What is done on a day, the same for both ways of judging. */
final class CrawledDay {

	static final Actor TECHNICAL = new Actor("Ines Loop", "technical", "test");

	final SmallCompetition small;

	private final ApplicationContext context;

	CrawledDay(SmallCompetition small, ApplicationContext context) {
		this.small = small;
		this.context = context;
	}

	<T> T the(Class<T> facade) {
		return this.context.getBean(facade);
	}

	boolean isPoints() {
		return this.small.event().isJudgedByPoints();
	}

	PerformanceView call() {
		return this.small.callNext(1);
	}

	/** The referee's clock. */
	PerformanceClock clock() {
		return the(PerformanceClock.class);
	}

	/**
	 * Let so many judges send a card; in points judging the elements are called first.
	 */
	PerformanceView sent(PerformanceView performance, int judges) {
		Supplier<CalledListView> list = () -> the(ElementCalls.class).ofPerformance(performance.id())
			.orElseGet(() -> elements(performance));
		this.small.seats().stream().limit(judges).forEach((seat) -> {
			if (isPoints()) {
				PointsJudge.send(this.context, performance, seat, list.get(), seat.number());
			}
			else {
				this.small.send(performance, seat, 1, new CardMarks(400 + 10 * seat.number(), 450));
			}
		});
		return performance;
	}

	private CalledListView elements(PerformanceView performance) {
		return call(performance,
				new ElementCalls.CallElements.Call(null, "ME4", JudgedElement.ElementWorth.COUNTS, null, true),
				new ElementCalls.CallElements.Call(null, "TwE3", JudgedElement.ElementWorth.COUNTS, 550),
				new ElementCalls.CallElements.Call(null, "AC9", JudgedElement.ElementWorth.NO_VALUE, null));
	}

	/** Call these elements as the next list. */
	CalledListView call(PerformanceView performance, ElementCalls.CallElements.Call... calls) {
		ElementCalls elements = the(ElementCalls.class);
		int seen = elements.ofPerformance(performance.id()).map(CalledListView::sequence).orElse(0);
		return elements.call(new ElementCalls.CallElements(performance.id(), seen + 1, List.of(calls)), TECHNICAL);
	}

	/** Settle every review, authorise, and note a fall afterwards. */
	void authorise(PerformanceView performance) {
		CalledListView list = the(ElementCalls.class).ofPerformance(performance.id()).orElseThrow();
		ElementCalls.CallElements.Call[] settled = list.elements()
			.stream()
			.map((element) -> new ElementCalls.CallElements.Call(element.id(), element.code(), element.worth(),
					element.base()))
			.toArray(ElementCalls.CallElements.Call[]::new);
		int sequence = call(performance, settled).sequence();
		the(ListAuthorisations.class).authorise(performance.id(), sequence, TECHNICAL);
		the(DeductionNotes.class).note(new DeductionNotes.NoteDeductions(performance.id(), 1,
				List.of(new DeductionNotes.NoteDeductions.Item("fall", 2))), TECHNICAL);
	}

	/** Call, judge and close the next team. */
	PerformanceView skate() {
		PerformanceView performance = sent(call(), this.small.seats().size());
		if (isPoints()) {
			authorise(performance);
		}
		this.small.close(performance);
		return this.small.now(performance);
	}

	void skateAll() {
		this.small.open(1);
		IntStream.range(0, this.small.entries().size()).forEach((i) -> skate());
	}

	void reopen(PerformanceView performance) {
		the(CardReopening.class).reopen(performance.id(), performance.version(), "A card was keyed in the wrong row",
				SmallCompetition.REFEREE);
	}

	void end(PerformanceView performance, PerformanceStatus how) {
		the(SegmentRun.class).end(performance.id(), this.small.now(performance).version(), how, "As it was",
				SmallCompetition.REFEREE);
	}

	void post() {
		the(ResultPublication.class).post(this.small.segment(1), version(), SmallCompetition.REFEREE);
	}

	void sign(Signatories.Signatory signatory) {
		the(ResultPublication.class).sign(this.small.segment(1), version(), signatory,
				(signatory == Signatories.Signatory.REFEREE) ? SmallCompetition.REFEREE : SmallCompetition.ACCOUNTANT);
	}

	void makeOfficial() {
		skateAll();
		post();
		sign(Signatories.Signatory.REFEREE);
		sign(Signatories.Signatory.ACCOUNTANT);
	}

	/** The version of the result of the segment. */
	int version() {
		return the(Standings.class).result(this.small.segment(1)).orElseThrow().version();
	}

	/** Let a team ask twice, and the referee rule once. */
	void ask() {
		EntryId team = this.small.entries().get(0).id();
		Rulings rulings = the(Rulings.class);
		rulings.ask(new Rulings.AskQuestion(team, null, QuestionView.RulingTopic.PROP, "May a flag be carried?",
				"Mira Sund"), SmallCompetition.SECRETARY);
		QuestionView question = rulings.ask(new Rulings.AskQuestion(team, null, QuestionView.RulingTopic.COSTUME,
				"May the cord hang loose?", "Mira Sund"), SmallCompetition.SECRETARY);
		rulings.rule(new Rulings.GiveRuling(question.id(), 0, new RulingView.Answer(RulingView.Verdict.CONDITIONAL,
				"if it is sewn on", "It is part of it.", "C 4", true), ""), SmallCompetition.REFEREE);
	}

}
