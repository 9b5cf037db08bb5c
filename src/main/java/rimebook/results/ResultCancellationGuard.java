package rimebook.results;

import java.util.List;
import java.util.Optional;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

import rimebook.competition.CancellationGuard;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.wording.Sentence;

/**
 * What is signed is not cancelled in passing, nor is a segment from whose standing a
 * later one was opened.
 */
@Component
@Order(2)
class ResultCancellationGuard implements CancellationGuard {

	private final SegmentResultRepository results;

	private final Standings standings;

	ResultCancellationGuard(SegmentResultRepository results, Standings standings) {
		this.results = results;
		this.standings = standings;
	}

	@Override
	public Optional<Sentence> againstCancelling(EventView event, List<SegmentView> segments) {
		this.results.findLocked(event.segments().stream().map((each) -> each.id().value()).toList());
		return official(segments).or(() -> laterOpened(event, segments));
	}

	private Optional<Sentence> official(List<SegmentView> segments) {
		return segments.stream()
			.filter((segment) -> this.standings.result(segment.id())
				.filter((result) -> result.state() == SegmentResultView.SegmentResultState.OFFICIAL)
				.isPresent())
			.findFirst()
			.map((segment) -> Sentence.of("results.official-before-cancelling", segment.name()));
	}

	private Optional<Sentence> laterOpened(EventView event, List<SegmentView> segments) {
		int last = segments.get(segments.size() - 1).position();
		return event.segments()
			.stream()
			.filter((later) -> later.position() > last && !later.isCancelled())
			.filter((later) -> this.standings.result(later.id()).isPresent())
			.findFirst()
			.map((later) -> Sentence.of("results.later-segment-opened", later.name()));
	}

}
