package rimebook.keying;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryState;
import rimebook.entries.EntryView;
import rimebook.entries.PlannedElements;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** The teams of a segment as they stand on blank cards. */
@Component
class BlankStarts {

	private final SegmentRun run;

	private final StartingOrderDraw draw;

	private final Entries entries;

	private final PlannedElements plans;

	BlankStarts(SegmentRun run, StartingOrderDraw draw, Entries entries, PlannedElements plans) {
		this.run = run;
		this.draw = draw;
		this.entries = entries;
		this.plans = plans;
	}

	/** From the performances once the segment is open, before that from the draw. */
	List<BlankCards.Start> of(SegmentId segment) {
		List<PerformanceView> performances = this.run.performances(segment);
		if (!performances.isEmpty()) {
			return performances.stream()
				.map((one) -> start(one.startNumber(), one.entry(), segment, skates(one.status())))
				.toList();
		}
		return this.draw.ofSegment(segment)
			.orElseThrow(() -> new RuleViolationException("order-not-drawn", Sentence.of("keying.order-not-drawn")))
			.starts()
			.stream()
			.map((one) -> start(one.number(), one.entry(), segment, true))
			.toList();
	}

	private static boolean skates(PerformanceStatus status) {
		return status != PerformanceStatus.WITHDRAWN && status != PerformanceStatus.DISQUALIFIED;
	}

	private BlankCards.Start start(int number, EntryId id, SegmentId segment, boolean skates) {
		EntryView entry = this.entries.entry(id);
		return new BlankCards.Start(number, entry.team().name(), entry.team().club().name(),
				skates && entry.state() == EntryState.ENTERED, this.plans.of(id, segment).codes());
	}

}
