package rimebook.performances;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.competition.StillOpen;
import rimebook.draw.StartingOrderDraw;
import rimebook.draw.StartingOrderView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryState;
import rimebook.panels.PanelView;
import rimebook.panels.Panels;
import rimebook.panels.SeatPlace;
import rimebook.shared.ConflictException;
import rimebook.shared.Ids;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/** Opens a segment once all is true that must be before the first team is called. */
@Component
class SegmentOpening {

	private final PerformanceRepository performances;

	private final Competitions competitions;

	private final StartingOrderDraw draw;

	private final Panels panels;

	private final FirstPerformances first;

	private final StillOpen stillOpen;

	SegmentOpening(PerformanceRepository performances, Competitions competitions, StartingOrderDraw draw, Panels panels,
			FirstPerformances first, StillOpen stillOpen) {
		this.stillOpen = stillOpen;
		this.performances = performances;
		this.competitions = competitions;
		this.draw = draw;
		this.panels = panels;
		this.first = first;
	}

	/** Check it, and open the performances in their order; returns how many there are. */
	int open(SegmentId segment) {
		this.competitions.holding(this.competitions.eventOf(segment).id());
		if (this.performances.existsBySegment(segment.value())) {
			throw new ConflictException("segment-open", Sentence.of("performances.segment-open"));
		}
		EventView event = this.competitions.eventOf(segment);
		this.stillOpen.require(segment);
		requireRunning(event);
		requirePanel(event);
		requireEarlierSegmentsDone(event, segment);
		requireNobodyLeftOut(segment);
		List<Performance> opened = order(segment).starts()
			.stream()
			.map((start) -> this.first.of(segment, start))
			.toList();
		opened.forEach(this.performances::save);
		return opened.size();
	}

	private void requireRunning(EventView event) {
		if (this.competitions.competition(event.competition()).state() != CompetitionState.RUNNING) {
			throw new RuleViolationException("competition-not-running",
					Sentence.of("performances.competition-not-running"));
		}
	}

	private void requirePanel(EventView event) {
		PanelView panel = this.panels.ofEvent(event.id());
		if (!panel.isComplete()) {
			throw new RuleViolationException("panel-incomplete", Sentence.of("performances.panel-incomplete",
					Series.withCommas(panel.empty().stream().map(SeatPlace::spoken).toList())));
		}
	}

	private void requireEarlierSegmentsDone(EventView event, SegmentId segment) {
		for (SegmentView earlier : event.previousSegments(segment)) {
			if (!isDone(earlier.id())) {
				throw new RuleViolationException("earlier-segment-open",
						Sentence.of("performances.earlier-segment-open", earlier.name()));
			}
		}
	}

	private boolean isDone(SegmentId segment) {
		List<Performance> all = this.performances.findBySegmentOrderByStartNumber(segment.value());
		return !all.isEmpty() && all.stream().allMatch((performance) -> performance.status().isDone());
	}

	/**
	 * Refuse to call the first team while another one that takes part has no number. The
	 * caller holds the competition.
	 */
	void requireWholeBeforeFirstCall(SegmentId segment) {
		if (!this.performances.existsBySegmentAndCalledAtNotNull(segment.value())) {
			requireNobodyLeftOut(segment);
		}
	}

	/** A team may have come, or a withdrawal been taken back, since the draw. */
	private void requireNobodyLeftOut(SegmentId segment) {
		List<String> without = this.draw.leftOut(segment);
		if (!without.isEmpty()) {
			throw new RuleViolationException("order-incomplete",
					Sentence.of("performances.order-incomplete", Series.withCommas(without)));
		}
	}

	private StartingOrderView order(SegmentId segment) {
		return this.draw.ofSegment(segment)
			.orElseThrow(() -> new RuleViolationException("order-missing", Sentence.of("performances.order-missing")));
	}

	/** Makes the performances of a segment as they are when it is opened. */
	@Component
	static class FirstPerformances {

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

}
