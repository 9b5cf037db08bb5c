package rimebook.crawl;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

import rimebook.clock.InterruptionCause;
import rimebook.competition.Cancellations;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.panels.Panels;
import rimebook.paper.PaperKeying;
import rimebook.performances.AbsentJudges;
import rimebook.performances.PanelChanges;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.Reskates;
import rimebook.performances.SegmentRun;
import rimebook.placement.MarkLine;
import rimebook.remarks.Remarks;
import rimebook.results.ResultPublication;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.SmallCompetition;

/**
 * How a running event of one segment comes into each of its states, by the state's name.
 */
final class StatesOfADay {

	private StatesOfADay() {
	}

	/** States that both ways of judging have. */
	static Map<String, Consumer<CrawledDay>> all() {
		Map<String, Consumer<CrawledDay>> states = new LinkedHashMap<>();
		states.put("not drawn", StatesOfADay::codes);
		states.put("drawn", StatesOfADay::drawn);
		states.put("nobody called", (day) -> day.small.open(1));
		states.put("some cards and every remark", StatesOfADay::remark);
		states.put("stopped", (day) -> day.clock().stop(skating(day).id(), 1, SmallCompetition.REFEREE));
		states.put("interrupted", (day) -> interrupted(day));
		states.put("resumed",
				(day) -> day.clock().resume(interrupted(day).id(), 2, "after the lift", SmallCompetition.REFEREE));
		states.put("skated again", (day) -> day.clock()
			.reskate(interrupted(day).id(), 2, Reskates.Marking.RESKATED_ONLY, SmallCompetition.REFEREE));
		states.put("skates again later", StatesOfADay::skateLater);
		states.put("called out of order", StatesOfADay::callSecond);
		states.put("cancelled", StatesOfADay::cancel);
		states.put("one team closed", (day) -> closedOne(day));
		states.put("card reopened", (day) -> day.reopen(closedOne(day)));
		states.put("nobody is left", StatesOfADay::endAll);
		states.put("substitute", StatesOfADay::takeOver);
		states.put("judge left out", StatesOfADay::leaveOut);
		states.put("all done", CrawledDay::skateAll);
		states.put("posted", StatesOfADay::post);
		states.put("official", CrawledDay::makeOfficial);
		states.put("opened again", StatesOfADay::openAgain);
		states.put("back from final", StatesOfADay::backFromFinal);
		states.put("final", StatesOfADay::finish);
		states.put("archived", (day) -> finish(day).small.move(CompetitionState.ARCHIVED));
		return states;
	}

	private static void codes(CrawledDay day) {
		day.the(Panels.class).issueCodes(day.small.event().id(), SmallCompetition.REFEREE);
	}

	private static void post(CrawledDay day) {
		day.skateAll();
		day.post();
	}

	private static void drawn(CrawledDay day) {
		day.ask();
		day.small.draw(1);
	}

	private static PerformanceView onIce(CrawledDay day) {
		day.small.open(1);
		return day.call();
	}

	private static PerformanceView skating(CrawledDay day) {
		PerformanceView performance = onIce(day);
		day.clock().start(performance.id(), 0, SmallCompetition.REFEREE);
		return performance;
	}

	private static PerformanceView interrupted(CrawledDay day) {
		PerformanceView performance = skating(day);
		day.clock().interrupt(performance.id(), 1, InterruptionCause.EQUIPMENT, SmallCompetition.REFEREE);
		return performance;
	}

	/** The whole programme, while the next team skates. */
	private static void skateLater(CrawledDay day) {
		day.clock()
			.reskate(day.sent(interrupted(day), 2).id(), 2, Reskates.Marking.RESKATED_ONLY, SmallCompetition.REFEREE);
		PerformanceView again = day.small.performances(1).get(0);
		day.the(Reskates.class).letWait(again.id(), again.version(), "A rest", SmallCompetition.REFEREE);
		day.call();
	}

	private static void callSecond(CrawledDay day) {
		day.small.open(1);
		PerformanceView second = day.small.performances(1).get(1);
		day.the(SegmentRun.class)
			.call(second.id(), second.version(), "The first waits for its bus", SmallCompetition.REFEREE);
	}

	private static void cancel(CrawledDay day) {
		drawn(day);
		day.the(Cancellations.class).cancel(day.small.event().id(), "Too few teams", SmallCompetition.SECRETARY);
	}

	private static void backFromFinal(CrawledDay day) {
		finish(day);
		CompetitionView competition = day.the(Competitions.class).competition(day.small.competition().id());
		day.the(Competitions.class)
			.takeBack(competition.id(), competition.version(), "A result was signed too early",
					SmallCompetition.SECRETARY);
	}

	private static void remark(CrawledDay day) {
		day.ask();
		PerformanceView performance = day.sent(onIce(day), 1);
		for (Remarks.RemarkKind kind : Remarks.RemarkKind.values()) {
			day.the(Remarks.class).note(performance.id(), kind, "As it was seen", SmallCompetition.REFEREE);
		}
	}

	private static PerformanceView closedOne(CrawledDay day) {
		day.small.open(1);
		return day.skate();
	}

	/** One team after the other ends in each way that has no place. */
	private static void endAll(CrawledDay day) {
		day.end(onIce(day), PerformanceStatus.NOT_FINISHED);
		day.end(day.call(), PerformanceStatus.DISQUALIFIED);
		day.end(day.small.performances(1).get(2), PerformanceStatus.WITHDRAWN);
	}

	private static void takeOver(CrawledDay day) {
		day.small.seatSubstitute();
		PerformanceView performance = day.sent(onIce(day), 1);
		if (!day.isPoints()) {
			keyDifferently(day, performance);
		}
		day.the(PanelChanges.class)
			.takeOver(day.small.segment(1), day.small.seats().get(1).id(), "Taken ill", SmallCompetition.REFEREE);
	}

	private static void keyDifferently(CrawledDay day, PerformanceView performance) {
		day.the(PaperKeying.class)
			.key(performance.id(), day.small.seats().get(0).id(), MarkLine.card(new CardMarks(500, 510)),
					SmallCompetition.ACCOUNTANT);
	}

	private static void leaveOut(CrawledDay day) {
		PerformanceView performance = day.sent(onIce(day), 2);
		if (day.isPoints()) {
			day.authorise(performance);
		}
		day.the(AbsentJudges.class)
			.close(new AbsentJudges.CloseWithout(performance.id(), day.small.now(performance).version(),
					Set.of(day.small.seats().get(2).id()), "12.3", "Taken ill"), SmallCompetition.REFEREE);
	}

	private static void openAgain(CrawledDay day) {
		day.makeOfficial();
		day.the(ResultPublication.class)
			.reopen(day.small.segment(1), day.version(), "A mark was mistyped", SmallCompetition.REFEREE);
	}

	static CrawledDay finish(CrawledDay day) {
		day.makeOfficial();
		day.small.move(CompetitionState.FINAL);
		return day;
	}

}
