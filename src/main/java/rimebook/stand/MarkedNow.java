package rimebook.stand;

import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.clock.ClockView;
import rimebook.clock.PerformanceClock;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.CardBook;
import rimebook.performances.CardBooks;
import rimebook.performances.CountingPanel;
import rimebook.performances.CountingPanels;
import rimebook.performances.PerformanceView;
import rimebook.remarks.RemarkReceipts;
import rimebook.wording.Sentence;

/** Gathers what there is of performances that are marked: cards, remarks, clock. */
@Component
class MarkedNow {

	private final StandRows rows;

	private final RemarkReceipts remarks;

	private final CardBooks books;

	private final PerformanceClock clocks;

	private final CountingPanels panels;

	MarkedNow(StandRows rows, RemarkReceipts remarks, CardBooks books, PerformanceClock clocks, CountingPanels panels) {
		this.rows = rows;
		this.remarks = remarks;
		this.books = books;
		this.clocks = clocks;
		this.panels = panels;
	}

	/** Some performances of one segment, by the panel that counts for all of them. */
	List<StandView.Now> of(List<PerformanceView> some) {
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
		return new StandView.Now(this.rows.of(performance), new StandView.Now.Cards(
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
