package rimebook.results;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryGuard;
import rimebook.entries.EntryView;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.wording.Sentence;

/**
 * A team that has nothing left to skate is not withdrawn in passing: what counts of it is
 * for two officials to change, and of a signed result only after it was opened again.
 */
@Component
class SkatedTeamGuard implements EntryGuard {

	private final Competitions competitions;

	private final SegmentRun run;

	private final Standings standings;

	SkatedTeamGuard(Competitions competitions, SegmentRun run, Standings standings) {
		this.competitions = competitions;
		this.run = run;
		this.standings = standings;
	}

	@Override
	public Optional<Sentence> refusesWithdrawal(EntryView entry) {
		EventView event = this.competitions.event(entry.event());
		SegmentView last = event.segments().get(event.segments().size() - 1);
		return this.run.performances(last.id())
			.stream()
			.filter((performance) -> performance.entry().equals(entry.id()))
			.filter((performance) -> performance.status().isDone())
			.findFirst()
			.map((performance) -> sentence(entry, performance, last));
	}

	private Sentence sentence(EntryView entry, PerformanceView performance, SegmentView last) {
		boolean official = this.standings.result(performance.segment())
			.filter((result) -> result.state() == SegmentResultView.SegmentResultState.OFFICIAL)
			.isPresent();
		return Sentence.of(official ? "results.team-has-skated.signed" : "results.team-has-skated", entry.team().name(),
				last.name());
	}

}
