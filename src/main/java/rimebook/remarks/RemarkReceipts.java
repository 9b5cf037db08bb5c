package rimebook.remarks;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.Competitions;
import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.NotFoundException;
import rimebook.wording.Sentence;

/**
 * Which seat has seen which remark of the referee. What was seen without contact is heard
 * of later, also after the cards were closed.
 */
@Service
public class RemarkReceipts {

	private final RemarkRepository remarks;

	private final RemarkReceiptRepository seen;

	private final PerformanceRegister performances;

	private final Panels panels;

	private final Competitions competitions;

	private final Acts acts;

	RemarkReceipts(RemarkRepository remarks, RemarkReceiptRepository seen, PerformanceRegister performances,
			Panels panels, Competitions competitions, Acts acts) {
		this.acts = acts;
		this.remarks = remarks;
		this.seen = seen;
		this.performances = performances;
		this.panels = panels;
		this.competitions = competitions;
	}

	/**
	 * Note that a seat has seen a remark.
	 * @return the word that it is kept; for a repetition the first answer again
	 * @throws NotFoundException if there is no such remark, or it is not for this seat
	 */
	@Transactional
	public Receipt see(UUID id, SeatId seat, Actor actor) {
		Remark remark = this.remarks.findById(id).orElseThrow(() -> NotFoundException.of("remark", id));
		PerformanceView performance = this.performances.hold(new PerformanceId(remark.performance()));
		SeatView own = judge(performance, seat);
		return this.seen.findByRemarkAndSeat(id, seat.value())
			.map(RemarkReceipt::seen)
			.orElseGet(() -> keep(remark, own, actor));
	}

	private Receipt keep(Remark remark, SeatView seat, Actor actor) {
		RemarkReceipt kept = new RemarkReceipt(this.acts.nextId(), remark, seat.id(), this.acts.now());
		this.seen.save(kept);
		this.acts.publish(AuditedChange.of(actor, "performance", remark.performance(), "remark.seen")
			.to(seat.label() + ": " + remark.inWords()));
		return kept.seen();
	}

	private SeatView judge(PerformanceView performance, SeatId id) {
		return this.panels.withCard(this.competitions.eventOf(performance.segment()).id())
			.stream()
			.filter((seat) -> seat.id().equals(id))
			.findFirst()
			.orElseThrow(() -> new NotFoundException("remark-not-of-seat", Sentence.of("remarks.not-of-seat")));
	}

	/** The remarks on a performance as one seat has them, oldest first. */
	public List<ToSeat> toldTo(SeatId seat, PerformanceId performance) {
		Set<UUID> known = this.seen.findByPerformanceAndSeat(performance.value(), seat.value())
			.stream()
			.map(RemarkReceipt::remark)
			.collect(Collectors.toSet());
		return views(performance).stream().map((remark) -> new ToSeat(remark, known.contains(remark.id()))).toList();
	}

	/** The remarks on a performance with the seats that have not seen them. */
	public List<ToPanel> told(PerformanceId performance, List<SeatView> seats) {
		List<RemarkReceipt> all = this.seen.findByPerformance(performance.value());
		return views(performance).stream()
			.map((remark) -> new ToPanel(remark, notYet(remark, seats, all), seats.size()))
			.toList();
	}

	private static List<String> notYet(Remarks.RemarkView remark, List<SeatView> seats, List<RemarkReceipt> all) {
		Set<SeatId> known = all.stream()
			.filter((seen) -> seen.remark().equals(remark.id()))
			.map(RemarkReceipt::seat)
			.collect(Collectors.toSet());
		return seats.stream().filter((seat) -> !known.contains(seat.id())).map(SeatView::label).toList();
	}

	private List<Remarks.RemarkView> views(PerformanceId performance) {
		return this.remarks.findByPerformanceOrderByNotedAt(performance.value()).stream().map(Remark::view).toList();
	}

	/**
	 * A remark of the referee as the panel has it.
	 *
	 * @param notYet the labels of the seats that have not said that they saw it
	 * @param seats how many seats count
	 */
	public record ToPanel(Remarks.RemarkView remark, List<String> notYet, int seats) {

		public ToPanel {
			notYet = List.copyOf(notYet);
		}

	}

	/**
	 * A remark of the referee as one seat has it.
	 *
	 * @param seen whether this seat has said that it has seen it
	 */
	public record ToSeat(Remarks.RemarkView remark, boolean seen) {
	}

	/**
	 * The service's word that it knows a remark was seen.
	 *
	 * @param id the remark's identity
	 * @param seenAt when the service first heard that the seat saw it, UTC
	 */
	public record Receipt(UUID id, Instant seenAt) {
	}

}
