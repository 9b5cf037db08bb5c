package rimebook.marks;

import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.TeamView;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;

/** The referee's look at a segment: order, ice, panel. */
@Service
public class Stand {

	private final PerformanceRepository performances;

	private final RemarkRepository remarks;

	private final PanelCards cards;

	private final Competitions competitions;

	private final Entries entries;

	Stand(PerformanceRepository performances, RemarkRepository remarks, PanelCards cards, Competitions competitions,
			Entries entries) {
		this.performances = performances;
		this.remarks = remarks;
		this.cards = cards;
		this.competitions = competitions;
		this.entries = entries;
	}

	/** Return the segment as the referee sees it now. */
	@Transactional(readOnly = true)
	public StandView ofSegment(SegmentId id) {
		EventView event = this.competitions.eventOf(id);
		List<StandView.Row> order = this.performances.findBySegmentOrderByStartNumber(id.value())
			.stream()
			.map(this::row)
			.toList();
		StandView.Row onIce = first(order, PerformanceStatus.ON_ICE);
		return new StandView(event, event.segment(id), !order.isEmpty(), order, (onIce != null) ? now(id, onIce) : null,
				first(order, PerformanceStatus.WAITING));
	}

	private static StandView.@Nullable Row first(List<StandView.Row> order, PerformanceStatus status) {
		return order.stream().filter((row) -> row.performance().status() == status).findFirst().orElse(null);
	}

	private StandView.Row row(Performance performance) {
		TeamView team = this.entries.entry(performance.entry()).team();
		return new StandView.Row(performance.view(), team.name(), team.spokenAs(), team.club().name());
	}

	private StandView.Now now(SegmentId segment, StandView.Row row) {
		PerformanceId id = row.performance().id();
		Map<SeatId, CardSubmission> newest = this.cards.newestOf(id);
		return new StandView.Now(row,
				this.cards.seats(segment).stream().map((seat) -> seatCard(seat, newest.get(seat.id()))).toList(),
				this.remarks.findByPerformanceOrderByNotedAt(id.value()).stream().map(Remark::view).toList());
	}

	private static StandView.SeatCard seatCard(SeatView seat, @Nullable CardSubmission card) {
		String official = (seat.official() != null) ? seat.official().name() : "";
		if (card == null) {
			return new StandView.SeatCard(seat.label(), official, null, null, 0, seat.lastHeardAt());
		}
		return new StandView.SeatCard(seat.label(), official, card.marks(), card.acknowledged().receivedAt(),
				card.sequence(), seat.lastHeardAt());
	}

}
