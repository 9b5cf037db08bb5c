package rimebook.stand;

import java.util.List;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;

import rimebook.commentary.ElementsCalled;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.entries.PlannedElements;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.points.CalledElement;
import rimebook.points.CalledListView;
import rimebook.points.ElementCalls;
import rimebook.points.TechnicalDesk;

/** Tells commentators which elements were called, and keeps the rest of the list. */
@Component
class CalledForCommentary implements ElementsCalled {

	private final SegmentRun run;

	private final ElementCalls calls;

	private final TechnicalDesk desk;

	private final PlannedElements plans;

	CalledForCommentary(SegmentRun run, ElementCalls calls, TechnicalDesk desk, PlannedElements plans) {
		this.run = run;
		this.calls = calls;
		this.desk = desk;
		this.plans = plans;
	}

	@Override
	public CalledSoFar of(SegmentId segment, EntryId entry) {
		return this.run.performances(segment)
			.stream()
			.filter((performance) -> performance.entry().equals(entry)
					&& performance.status() == PerformanceStatus.ON_ICE)
			.findFirst()
			.map(PerformanceView::id)
			.flatMap(this.calls::ofPerformance)
			.map((list) -> soFar(list, this.plans.of(entry, segment).codes()))
			.orElse(CalledSoFar.NOTHING);
	}

	private CalledSoFar soFar(CalledListView list, List<String> planned) {
		return new CalledSoFar(list.elements().stream().map(CalledElement::element).toList(),
				this.desk.progress(planned, list.elements())
					.stream()
					.filter((line) -> line.state() == TechnicalDesk.PlannedLine.State.CALLED)
					.map(TechnicalDesk.PlannedLine::number)
					.collect(Collectors.toSet()));
	}

}
