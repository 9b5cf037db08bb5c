package rimebook.performances;

import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.draw.StartingOrderView;
import rimebook.entries.Entries;
import rimebook.entries.EntryState;
import rimebook.shared.Ids;

/** Makes the performances of a segment as they are when it is opened. */
@Component
class FirstPerformances {

	private final PerformanceRepository performances;

	private final Entries entries;

	private final Ids ids;

	FirstPerformances(PerformanceRepository performances, Entries entries, Ids ids) {
		this.performances = performances;
		this.entries = entries;
		this.ids = ids;
	}

	/** One that waits, unless its team withdrew or was out in an earlier segment. */
	Performance of(SegmentId segment, StartingOrderView.Start start) {
		Performance performance = new Performance(this.ids.next(), segment, start);
		if (this.entries.entry(start.entry()).state() == EntryState.WITHDRAWN) {
			performance.endWith(start.entry().value(), PerformanceStatus.WITHDRAWN, "Withdrawn after the draw.");
			return performance;
		}
		this.performances.findByEntry(start.entry().value())
			.stream()
			.filter((earlier) -> earlier.status().isEndedWithoutMarks())
			.findFirst()
			.ifPresent(performance::endAfter);
		return performance;
	}

}
