package rimebook.results;

import java.util.Optional;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionMoveGuard;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.wording.Sentence;

/**
 * A competition is final once the result of every segment that takes place is official.
 * An event without teams has nothing to wait for.
 */
@Component
class FinalResultGuard implements CompetitionMoveGuard {

	private final Competitions competitions;

	private final Standings standings;

	private final SegmentResultRepository results;

	private final Entries entries;

	FinalResultGuard(Competitions competitions, Standings standings, SegmentResultRepository results, Entries entries) {
		this.competitions = competitions;
		this.standings = standings;
		this.results = results;
		this.entries = entries;
	}

	/** Whoever changes a result meanwhile waits, and is then refused. */
	@Override
	@Transactional
	public void holdStill(CompetitionView competition, CompetitionState next) {
		if (next == CompetitionState.FINAL) {
			this.results.findLocked(this.competitions.events(competition.id())
				.stream()
				.flatMap((event) -> event.segments().stream())
				.map((segment) -> segment.id().value())
				.toList());
		}
	}

	@Override
	@Transactional(readOnly = true)
	public Optional<Sentence> refusal(CompetitionView competition, CompetitionState next) {
		if (next != CompetitionState.FINAL) {
			return Optional.empty();
		}
		return this.competitions.events(competition.id())
			.stream()
			.filter((event) -> !event.isCancelled() && !isEmpty(event))
			.flatMap((event) -> event.held()
				.segments()
				.stream()
				.filter((segment) -> !isOfficial(segment.id()))
				.map((segment) -> Sentence.of("results.not-official-yet", event.name(), segment.name())))
			.findFirst();
	}

	private boolean isEmpty(EventView event) {
		return this.entries.ofEvent(event.id()).stream().noneMatch(EntryView::isEntered)
				&& event.segments().stream().noneMatch((segment) -> this.standings.result(segment.id()).isPresent());
	}

	private boolean isOfficial(SegmentId segment) {
		return this.standings.result(segment)
			.filter((result) -> result.state() == SegmentResultView.SegmentResultState.OFFICIAL)
			.isPresent();
	}

}
