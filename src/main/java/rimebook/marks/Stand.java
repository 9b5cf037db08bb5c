package rimebook.marks;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.TeamView;
import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;

/** The referee's look at a segment: order, ice, panel. */
@Service
public class Stand {

	private final PerformanceRepository performances;

	private final RemarksSeen remarks;

	private final CardBooks books;

	private final ClockBook clocks;

	private final Panels panels;

	private final Competitions competitions;

	private final Entries entries;

	Stand(PerformanceRepository performances, RemarksSeen remarks, CardBooks books, ClockBook clocks, Panels panels,
			Competitions competitions, Entries entries) {
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
		List<Performance> all = this.performances.findBySegmentOrderByStartNumber(id.value());
		List<StandView.Row> order = all.stream().map(this::row).toList();
		return new StandView(event, event.segment(id), !order.isEmpty(), order, first(event, all, Performance::isOnIce),
				first(order, PerformanceStatus.WAITING), first(event, all, Performance::isReopened));
	}

	private StandView.@Nullable Now first(EventView event, List<Performance> all, Predicate<Performance> wanted) {
		return all.stream().filter(wanted).findFirst().map((performance) -> now(event, performance)).orElse(null);
	}

	private static StandView.@Nullable Row first(List<StandView.Row> order, PerformanceStatus status) {
		return order.stream().filter((row) -> row.performance().status() == status).findFirst().orElse(null);
	}

	private StandView.Row row(Performance performance) {
		TeamView team = this.entries.entry(performance.entry()).team();
		return new StandView.Row(performance.view(), team.name(), team.spokenAs(), team.club().name());
	}

	private StandView.Now now(EventView event, Performance performance) {
		CardBook book = this.books.of(performance.segment());
		Map<SeatId, SentCard> sent = book.sentFor(performance);
		List<SeatView> seats = this.panels.judges(event.id());
		ClockView clock = this.clocks.of(performance);
		return new StandView.Now(row(performance),
				seats.stream().map((seat) -> seatCard(seat, sent.get(seat.id()))).toList(), book.missing(performance),
				book.anySentFor(performance.id()) || clock.last() != null, this.remarks.told(performance.id(), seats),
				clock);
	}

	private static StandView.SeatCard seatCard(SeatView seat, @Nullable SentCard card) {
		String official = (seat.official() != null) ? seat.official().name() : "";
		if (card == null) {
			return new StandView.SeatCard(seat.label(), official, "", null, 0, seat.pairedAt(), seat.lastHeardAt(),
					seat.waiting());
		}
		return new StandView.SeatCard(seat.label(), official, card.words(), card.receivedAt(), card.sequence(),
				seat.pairedAt(), seat.lastHeardAt(), seat.waiting());
	}

}
