package rimebook.results.web;

import java.util.List;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.UnderWay;
import rimebook.competition.UnderWay.DaySegment;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;
import rimebook.performances.SegmentRun;
import rimebook.results.SegmentResultView;
import rimebook.results.Signatories;
import rimebook.results.SignatureChecklist;
import rimebook.results.Standings;
import rimebook.shared.Actor;

/** Results to post and to sign, and competitions of which all are official. */
@Component
class ResultsWaiting implements WaitingList {

	private final UnderWay underWay;

	private final Standings standings;

	private final SegmentRun run;

	private final SignatureChecklist checklist;

	ResultsWaiting(UnderWay underWay, Standings standings, SegmentRun run, SignatureChecklist checklist) {
		this.underWay = underWay;
		this.standings = standings;
		this.run = run;
		this.checklist = checklist;
	}

	@Override
	public Stream<Waiting> waiting(Actor viewer) {
		List<DaySegment> running = this.underWay.segments(CompetitionState.RUNNING).toList();
		return Stream.concat(running.stream().flatMap(this::lines),
				this.underWay.competitions(CompetitionState.RUNNING)
					.filter((competition) -> isOfficial(competition, running))
					.map(ResultsWaiting::finish));
	}

	private Stream<Waiting> lines(DaySegment held) {
		return this.standings.result(held.segment().id()).stream().flatMap((result) -> switch (result.state()) {
			case RUNNING -> isSkated(held) ? Stream.of(line(held, "results.waiting.post", 0)) : Stream.empty();
			case POSTED -> signatures(held, result);
			case OFFICIAL -> Stream.empty();
		});
	}

	private boolean isSkated(DaySegment held) {
		return this.run.performances(held.segment().id())
			.stream()
			.allMatch((performance) -> performance.status().isDone());
	}

	private Stream<Waiting> signatures(DaySegment held, SegmentResultView result) {
		int heldBack = (int) this.checklist.of(held.segment().id())
			.stream()
			.filter(SignatureChecklist.SignatureCondition::holdsBack)
			.count();
		return Stream.of(Signatories.Signatory.values())
			.filter((signatory) -> result.signatures().of(signatory).name().isEmpty())
			.map((signatory) -> line(held, "results.waiting.sign", heldBack).only(signatory.name()));
	}

	private boolean isOfficial(CompetitionView competition, List<DaySegment> running) {
		List<DaySegment> own = running.stream().filter((held) -> held.competition().equals(competition)).toList();
		return !own.isEmpty() && own.stream()
			.allMatch((held) -> this.standings.result(held.segment().id())
				.filter((result) -> result.state() == SegmentResultView.SegmentResultState.OFFICIAL)
				.isPresent());
	}

	private static Waiting finish(CompetitionView competition) {
		return new Waiting(65, "results.waiting.final", 0, new Waiting.Place(competition.name(), ""),
				"/desk/competitions/" + competition.id());
	}

	private static Waiting line(DaySegment held, String key, int count) {
		return new Waiting(30, key, count, new Waiting.Place(held.where(), held.competition().name()),
				"/desk/results/" + held.segment().id());
	}

}
