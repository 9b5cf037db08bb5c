package rimebook.stand;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.clock.ClockView;
import rimebook.clock.PerformanceClock;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentPlace;
import rimebook.entries.Entries;
import rimebook.entries.TeamView;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.CardBook;
import rimebook.performances.CardBooks;
import rimebook.performances.CountingPanel;
import rimebook.performances.CountingPanels;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.performances.RunningOrder;
import rimebook.remarks.RemarkReceipts;
import rimebook.wording.Sentence;

/** The referee's look at a segment: order, ice, panel. */
@Service
public class Stand {

	private final PerformanceRegister performances;

	private final RemarkReceipts remarks;

	private final CardBooks books;

	private final PerformanceClock clocks;

	private final CountingPanels panels;

	private final Competitions competitions;

	private final Entries entries;

	Stand(PerformanceRegister performances, RemarkReceipts remarks, CardBooks books, PerformanceClock clocks,
			CountingPanels panels, Competitions competitions, Entries entries) {
		this.performances = performances;
		this.remarks = remarks;
		this.books = books;
		this.clocks = clocks;
		this.panels = panels;
		this.competitions = competitions;
		this.entries = entries;
	}

	/** Return the segment as the referee sees it now. */
	@Transactional(readOnly = true)
	public StandView ofSegment(SegmentId id) {
		EventView event = this.competitions.eventOf(id);
		List<PerformanceView> all = this.performances.ofSegment(id);
		List<StandView.Row> order = all.stream().map(this::row).toList();
		List<StandView.Now> taking = now(all.stream().filter(PerformanceView::takesCards).toList());
		PerformanceView next = RunningOrder.next(order.stream().map(StandView.Row::performance).toList()).orElse(null);
		return new StandView(
				new SegmentPlace(this.competitions.competition(event.competition()), event, event.segment(id)), order,
				new StandView.Ice(first(taking, PerformanceView::isOnIce),
						order.stream().filter((row) -> row.performance().equals(next)).findFirst().orElse(null),
						first(taking, PerformanceView::isReopened)));
	}

	/**
	 * Return a performance whose cards are closed, for a card that is added from paper;
	 * {@code null} for one that takes cards, or has none.
	 */
	@Transactional(readOnly = true)
	public StandView.@Nullable Now closed(SegmentId segment, String performance) {
		return first(now(this.performances.ofSegment(segment)
			.stream()
			.filter((one) -> one.id().toString().equals(performance) && one.hasClosedCards() && !one.takesCards())
			.toList()), (one) -> true);
	}

	private static StandView.@Nullable Now first(List<StandView.Now> some, Predicate<PerformanceView> wanted) {
		return some.stream().filter((one) -> wanted.test(one.row().performance())).findFirst().orElse(null);
	}

	private StandView.Row row(PerformanceView performance) {
		TeamView team = this.entries.entry(performance.entry()).team();
		return new StandView.Row(performance, team.name(), team.spokenAs(), team.club().name());
	}

	/** Some performances of one segment, by the panel that counts for all of them. */
	private List<StandView.Now> now(List<PerformanceView> some) {
		if (some.isEmpty()) {
			return List.of();
		}
		CountingPanel panel = this.panels.of(some.get(0).segment());
		return some.stream().map((performance) -> now(performance, panel)).toList();
	}

	private StandView.Now now(PerformanceView performance, CountingPanel panel) {
		CardBook book = this.books.of(performance.segment());
		Map<SeatId, CardBook.SentCard> sent = book.sentFor(performance);
		List<SeatView> seats = panel.senders();
		ClockView clock = this.clocks.ofPerformance(performance.id());
		return new StandView.Now(row(performance), new StandView.Now.Cards(
				seats.stream().map((seat) -> seatCard(seat, sent.get(seat.id()), standing(seat, panel))).toList(),
				book.missing(performance, panel.seats()), spare(performance, panel, book),
				book.anySentFor(performance.id()) || clock.last() != null),
				this.remarks.told(performance.id(), panel.seats()), clock);
	}

	private static List<Sentence> spare(PerformanceView performance, CountingPanel panel, CardBook book) {
		return panel.substitutes()
			.stream()
			.filter((seat) -> panel.replacedBy(seat.id()).isEmpty())
			.flatMap((seat) -> book.missing(performance, seat).stream())
			.toList();
	}

	private static StandView.SeatCard seatCard(SeatView seat, CardBook.@Nullable SentCard card,
			StandView.Standing standing) {
		String official = (seat.official() != null) ? seat.official().name() : "";
		StandView.SeatCard.Sent sent = (card == null) ? StandView.SeatCard.Sent.NOTHING
				: new StandView.SeatCard.Sent(card.words(), card.receivedAt(), card.sequence());
		return new StandView.SeatCard(seat.place(), official, sent, seat.tablet(), standing);
	}

	private static StandView.Standing standing(SeatView seat, CountingPanel panel) {
		if (panel.judge(seat.id()).isEmpty()) {
			return panel.replacedBy(seat.id()).isPresent() ? StandView.Standing.TAKEN_OVER
					: StandView.Standing.SUBSTITUTE;
		}
		return panel.counting(seat)
			.map((counting) -> counting.id().equals(seat.id()) ? StandView.Standing.COUNTS
					: StandView.Standing.REPLACED)
			.orElse(StandView.Standing.LEFT_OUT);
	}

}
