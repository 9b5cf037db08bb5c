package rimebook.performances;

import java.time.Clock;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.Ids;
import rimebook.shared.NotFoundException;

/**
 * Which seat has seen which remark of the referee. What was seen without contact is heard
 * of later, also after the cards were closed.
 */
@Service
public class RemarksSeen {

	private final RemarkRepository remarks;

	private final RemarkSeenRepository seen;

	private final PerformanceRegister performances;

	private final Panels panels;

	private final Competitions competitions;

	private final Ids ids;

	private final Clock clock;

	private final ApplicationEventPublisher events;

	RemarksSeen(RemarkRepository remarks, RemarkSeenRepository seen, PerformanceRegister performances, Panels panels,
			Competitions competitions, Ids ids, Clock clock, ApplicationEventPublisher events) {
		this.remarks = remarks;
		this.seen = seen;
		this.performances = performances;
		this.panels = panels;
		this.competitions = competitions;
		this.ids = ids;
		this.clock = clock;
		this.events = events;
	}

	/**
	 * Note that a seat has seen a remark.
	 * @return the word that it is kept; for a repetition the first answer again
	 * @throws NotFoundException if there is no such remark, or it is not for this seat
	 */
	@Transactional
	public SeenRemark see(UUID id, SeatId seat, Actor actor) {
		Remark remark = this.remarks.findById(id).orElseThrow(() -> NotFoundException.of("remark", id));
		PerformanceView performance = this.performances.hold(new PerformanceId(remark.performance()));
		SeatView own = judge(performance, seat);
		return this.seen.findByRemarkAndSeat(id, seat.value())
			.map(RemarkSeen::seen)
			.orElseGet(() -> keep(remark, own, actor));
	}

	private SeenRemark keep(Remark remark, SeatView seat, Actor actor) {
		RemarkSeen kept = new RemarkSeen(this.ids.next(), remark, seat.id(), this.clock.instant());
		this.seen.save(kept);
		this.events.publishEvent(AuditedChange.of(actor, "performance", remark.performance(), "remark.seen")
			.to(seat.label() + ": " + remark.inWords()));
		return kept.seen();
	}

	private SeatView judge(PerformanceView performance, SeatId id) {
		return this.panels.withCard(this.competitions.eventOf(performance.segment()).id())
			.stream()
			.filter((seat) -> seat.id().equals(id))
			.findFirst()
			.orElseThrow(() -> new NotFoundException("remark-not-of-seat",
					"That remark was not made to this seat's panel."));
	}

	/** The remarks on a performance as one seat has them, oldest first. */
	public List<RemarkToSeat> toldTo(SeatId seat, PerformanceId performance) {
		Set<UUID> known = this.seen.findByPerformanceAndSeat(performance.value(), seat.value())
			.stream()
			.map(RemarkSeen::remark)
			.collect(Collectors.toSet());
		return views(performance).stream()
			.map((remark) -> new RemarkToSeat(remark, known.contains(remark.id())))
			.toList();
	}

	/** The remarks on a performance with the seats that have not seen them. */
	public List<RemarkToPanel> told(PerformanceId performance, List<SeatView> seats) {
		List<RemarkSeen> all = this.seen.findByPerformance(performance.value());
		return views(performance).stream()
			.map((remark) -> new RemarkToPanel(remark, notYet(remark, seats, all), seats.size()))
			.toList();
	}

	private static List<String> notYet(RemarkView remark, List<SeatView> seats, List<RemarkSeen> all) {
		Set<SeatId> known = all.stream()
			.filter((seen) -> seen.remark().equals(remark.id()))
			.map(RemarkSeen::seat)
			.collect(Collectors.toSet());
		return seats.stream().filter((seat) -> !known.contains(seat.id())).map(SeatView::label).toList();
	}

	private List<RemarkView> views(PerformanceId performance) {
		return this.remarks.findByPerformanceOrderByNotedAt(performance.value()).stream().map(Remark::view).toList();
	}

}
