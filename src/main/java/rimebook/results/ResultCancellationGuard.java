package rimebook.results;

import java.util.List;
import java.util.Optional;

import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

import rimebook.competition.CancellationGuard;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;

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
	public Optional<String> againstCancelling(EventView event, List<SegmentView> segments) {
		this.results.findLocked(event.segments().stream().map((each) -> each.id().value()).toList());
		return official(segments).or(() -> laterOpened(event, segments));
	}

	private Optional<String> official(List<SegmentView> segments) {
		return segments.stream()
			.filter((segment) -> this.standings.result(segment.id())
				.filter((result) -> result.state() == SegmentResultView.SegmentResultState.OFFICIAL)
				.isPresent())
			.findFirst()
			.map((segment) -> "The result of " + segment.name()
					+ " is signed and official. The referee opens it again, with a reason, before it can be cancelled.");
	}

	private Optional<String> laterOpened(EventView event, List<SegmentView> segments) {
		int last = segments.get(segments.size() - 1).position();
		return event.segments()
			.stream()
			.filter((later) -> later.position() > last && !later.isCancelled())
			.filter((later) -> this.standings.result(later.id()).isPresent())
			.findFirst()
			.map((later) -> "The segment " + later.name() + " was opened after it; it cannot be cancelled any more.");
	}

}
