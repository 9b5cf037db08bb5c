package rimebook.tablets;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.CardBook;
import rimebook.performances.CardBooks;
import rimebook.performances.CountingPanels;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.points.PointsTasks;
import rimebook.remarks.RemarkReceipts;
import rimebook.tabulation.SegmentKind;

/**
 * Lays out what one seat may see. Another seat's marks are never read for it, so they
 * cannot leak.
 */
@Service
public class JudgeTables {

	private final PerformanceRegister performances;

	private final RemarkReceipts remarks;

	private final TabletCards cards;

	private final CardBooks books;

	private final PointsTasks tasks;

	private final Panels panels;

	private final CountingPanels countingPanels;

	private final Competitions competitions;

	private final Entries entries;

	JudgeTables(PerformanceRegister performances, RemarkReceipts remarks, TabletCards cards, CardBooks books,
			PointsTasks tasks, Panels panels, CountingPanels countingPanels, Competitions competitions,
			Entries entries) {
		this.performances = performances;
		this.remarks = remarks;
		this.cards = cards;
		this.books = books;
		this.tasks = tasks;
		this.panels = panels;
		this.countingPanels = countingPanels;
		this.competitions = competitions;
		this.entries = entries;
	}

	/** Return what the seat sees now. */
	@Transactional(readOnly = true)
	public JudgeTable tableOf(SeatId id) {
		SeatView seat = this.panels.seat(id);
		EventView event = this.competitions.event(seat.event());
		return underWay(event).map((segment) -> table(seat, event, segment, performances(segment)))
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
		EventView event = this.competitions.event(this.panels.seat(id).event());
		if (!event.isJudgedByPoints()) {
			return List.of();
		}
		return underWay(event).map((segment) -> this.tasks.cardsOf(id, performances(segment))).orElse(List.of());
	}

	/** The last segment that was opened. */
	private Optional<SegmentView> underWay(EventView event) {
		return event.segments()
			.stream()
			.filter((segment) -> this.performances.isOpened(segment.id()))
			.reduce((earlier, later) -> later);
	}

	private List<PerformanceView> performances(SegmentView segment) {
		return this.performances.ofSegment(segment.id());
	}

	private JudgeTable table(SeatView seat, EventView event, SegmentView segment, List<PerformanceView> all) {
		String told = this.countingPanels.of(segment.id()).told(seat.id());
		TabletCard.Given given = this.cards.of(event)
			.map((card) -> card.given(seat.id(), event, segment, all))
			.orElseGet(() -> TabletCard.Given.nothing(segment));
		Optional<PerformanceView> onIce = all.stream().filter(PerformanceView::isOnIce).findFirst();
		JudgeTable.Reopened reopened = all.stream()
			.filter(PerformanceView::isReopened)
			.findFirst()
			.map((performance) -> new JudgeTable.Reopened(now(performance, seat.id()),
					given.tasks().get(performance.id())))
			.orElse(null);
		List<PerformanceStatus> started = all.stream()
			.map(PerformanceView::status)
			.filter((status) -> status != PerformanceStatus.WITHDRAWN)
			.toList();
		int done = (int) started.stream().filter(PerformanceStatus::isDone).count();
		return new JudgeTable(
				new JudgeTable.Heading(seat.label(), event.name(), segment.name(), segment.kind(), given.secondLook()),
				new JudgeTable.Course(onIce.map((performance) -> now(performance, seat.id())).orElse(null),
						given.cards(), done, started.size()),
				new JudgeTable.Marking(event.judging().method(),
						onIce.map((performance) -> given.tasks().get(performance.id())).orElse(null), reopened),
				new JudgeTable.Decided(told, event.judging().policies().zeroMark(), ended(segment, all),
						corrected(seat.id(), event)));
	}

	/** What officials changed in the seat's closed cards of the event. */
	private List<JudgeTable.Corrected> corrected(SeatId seat, EventView event) {
		return this.books.of(event).corrected(seat).stream().map(this::corrected).toList();
	}

	private JudgeTable.Corrected corrected(CardBook.CorrectedCard card) {
		PerformanceView performance = this.performances.find(card.performance());
		SegmentView segment = this.competitions.eventOf(performance.segment()).segment(performance.segment());
		return new JudgeTable.Corrected(card.id(), performance.startNumber(), segment.name(), card.before(),
				card.after());
	}

	private List<PerformanceId> ended(SegmentView segment, List<PerformanceView> all) {
		Stream<PerformanceId> withoutMarks = all.stream()
			.filter((performance) -> performance.status().isEndedWithoutMarks())
			.map(PerformanceView::id);
		return Stream.concat(withoutMarks, this.performances.setAside(segment.id()).stream()).toList();
	}

	private JudgeTable.Now now(PerformanceView performance, SeatId seat) {
		EntryView entry = this.entries.entry(performance.entry());
		return new JudgeTable.Now(performance.id(), performance.startNumber(), entry.team().name(),
				entry.team().club().name(), this.remarks.toldTo(seat, performance.id()));
	}

}
