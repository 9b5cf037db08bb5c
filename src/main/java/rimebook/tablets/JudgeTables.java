package rimebook.tablets;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.CountingPanels;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.points.PointsTasks;
import rimebook.tabulation.SegmentKind;

/**
 * Lays out what one seat may see. Another seat's marks are never read for it, so they
 * cannot leak.
 */
@Service
public class JudgeTables {

	private final SeatsSegments segments;

	private final TabletCards cards;

	private final PointsTasks tasks;

	private final CountingPanels panels;

	private final CorrectedCards corrected;

	private final TeamsOnIce onIce;

	JudgeTables(SeatsSegments segments, TabletCards cards, PointsTasks tasks, CountingPanels panels,
			CorrectedCards corrected, TeamsOnIce onIce) {
		this.segments = segments;
		this.cards = cards;
		this.tasks = tasks;
		this.panels = panels;
		this.corrected = corrected;
		this.onIce = onIce;
	}

	/** Return what the seat sees now. */
	@Transactional(readOnly = true)
	public JudgeTable tableOf(SeatId id) {
		SeatView seat = this.segments.seat(id);
		EventView event = this.segments.event(seat);
		return this.segments.underWay(event)
			.map((segment) -> table(seat, event, segment, this.segments.performances(segment)))
			.orElseGet(
					() -> new JudgeTable(
							new JudgeTable.Heading(seat.label(), event.name(), "", null,
									SegmentKind.SHORT.cardTieBreak()),
							new JudgeTable.Course(null, List.of(), 0, 0),
							new JudgeTable.Marking(event.judging().method(), null, null),
							new JudgeTable.Decided(null, event.judging().policies().zeroMark(), List.of(), List.of())));
	}

	/**
	 * List the seat's own cards of the segment under way in points judging, by starting
	 * number; empty in placement judging, where the table has them.
	 */
	@Transactional(readOnly = true)
	public List<PointsTasks.OwnPointsCard> pointsCardsOf(SeatId id) {
		EventView event = this.segments.event(this.segments.seat(id));
		if (!event.isJudgedByPoints()) {
			return List.of();
		}
		return this.segments.underWay(event)
			.map((segment) -> this.tasks.cardsOf(id, this.segments.performances(segment)))
			.orElse(List.of());
	}

	private JudgeTable table(SeatView seat, EventView event, SegmentView segment, List<PerformanceView> all) {
		String told = this.panels.of(segment.id()).told(seat.id());
		TabletCard.Given given = this.cards.of(event)
			.map((card) -> card.given(seat.id(), event, segment, all))
			.orElseGet(() -> TabletCard.Given.nothing(segment));
		Optional<PerformanceView> onIce = all.stream().filter(PerformanceView::isOnIce).findFirst();
		JudgeTable.Reopened reopened = all.stream()
			.filter(PerformanceView::isReopened)
			.findFirst()
			.map((performance) -> new JudgeTable.Reopened(this.onIce.now(performance, seat.id()),
					given.tasks().get(performance.id())))
			.orElse(null);
		List<PerformanceStatus> started = all.stream()
			.map(PerformanceView::status)
			.filter((status) -> status != PerformanceStatus.WITHDRAWN)
			.toList();
		int done = (int) started.stream().filter(PerformanceStatus::isDone).count();
		return new JudgeTable(
				new JudgeTable.Heading(seat.label(), event.name(), segment.name(), segment.kind(), given.secondLook()),
				new JudgeTable.Course(onIce.map((performance) -> this.onIce.now(performance, seat.id())).orElse(null),
						given.cards(), done, started.size()),
				new JudgeTable.Marking(event.judging().method(),
						onIce.map((performance) -> given.tasks().get(performance.id())).orElse(null), reopened),
				new JudgeTable.Decided(told, event.judging().policies().zeroMark(), this.segments.ended(segment, all),
						this.corrected.of(seat.id(), event)));
	}

}
