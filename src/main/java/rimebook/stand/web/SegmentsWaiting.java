package rimebook.stand.web;

import java.util.List;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.UnderWay;
import rimebook.competition.UnderWay.DaySegment;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;
import rimebook.paper.PaperKeying;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.points.ListAuthorisations;
import rimebook.shared.Actor;
import rimebook.stand.Stand;
import rimebook.stand.StandView;

/** The segments that can be opened or are under way: whose turn it is, and what for. */
@Component
class SegmentsWaiting implements WaitingList {

	private final UnderWay underWay;

	private final SegmentRun run;

	private final Stand stand;

	private final OpeningSteps steps;

	private final PaperKeying keying;

	private final ListAuthorisations lists;

	SegmentsWaiting(UnderWay underWay, SegmentRun run, Stand stand, OpeningSteps steps, PaperKeying keying,
			ListAuthorisations lists) {
		this.underWay = underWay;
		this.run = run;
		this.stand = stand;
		this.steps = steps;
		this.keying = keying;
		this.lists = lists;
	}

	@Override
	public Stream<Waiting> waiting(Actor viewer) {
		return this.underWay.segments(CompetitionState.RUNNING).flatMap(this::lines);
	}

	private Stream<Waiting> lines(DaySegment held) {
		List<PerformanceView> all = this.run.performances(held.segment().id());
		if (all.isEmpty()) {
			boolean ready = this.steps.of(held.event(), held.segment().id())
				.stream()
				.allMatch(OpeningSteps.OpeningStep::done);
			return ready ? Stream.of(line(held, "stand.waiting.open", 0, "stand")) : Stream.empty();
		}
		if (all.stream().allMatch((performance) -> performance.status().isDone())) {
			return Stream.empty();
		}
		StandView stand = this.stand.ofSegment(held.segment().id());
		return Stream.of(ice(held, stand), list(held, stand), paper(held), announced(held, all))
			.flatMap((lines) -> lines);
	}

	/** What the referee does next. */
	private static Stream<Waiting> ice(DaySegment held, StandView stand) {
		StandView.Now marked = (stand.reopened() != null) ? stand.reopened() : stand.now();
		if (marked != null) {
			int missing = marked.cards().missing().size();
			return Stream
				.of(line(held, (missing > 0) ? "stand.waiting.cards" : "stand.waiting.close", missing, "stand"));
		}
		return (stand.next() != null) ? Stream.of(line(held, "stand.waiting.call", 0, "stand")) : Stream.empty();
	}

	private Stream<Waiting> list(DaySegment held, StandView stand) {
		StandView.Now now = stand.now();
		boolean due = now != null && held.event().hasTechnicalPanel()
				&& this.lists.ofPerformance(now.row().performance().id()).isEmpty();
		return due ? Stream.of(line(held, "stand.waiting.list", 0, "technical")) : Stream.empty();
	}

	private Stream<Waiting> paper(DaySegment held) {
		int unsettled = this.keying.unsettled(held.segment().id()).size();
		return (unsettled > 0) ? Stream.of(line(held, "stand.waiting.keying", unsettled, "keying")) : Stream.empty();
	}

	private static Stream<Waiting> announced(DaySegment held, List<PerformanceView> all) {
		int waiting = (int) all.stream()
			.filter((performance) -> performance.status() == PerformanceStatus.WAITING)
			.count();
		return Stream.of(line(held, "stand.waiting.announce", waiting, "sheet").only("ANNOUNCER"));
	}

	private static Waiting line(DaySegment held, String key, int count, String door) {
		return new Waiting(10, key, count, new Waiting.Place(held.where(), held.competition().name()),
				"/desk/" + door + "/" + held.segment().id());
	}

}
