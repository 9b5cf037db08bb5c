package rimebook.points;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.CardOrigin;
import rimebook.performances.CountingPanels;
import rimebook.performances.PerformanceId;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.SegmentRules;

/** What was sent for performances judged by points: of everything the newest counts. */
@Component
class PointsBook {

	private final CalledListRepository lists;

	private final PointsCardRepository cards;

	private final DeductionListRepository deductions;

	private final CountingPanels panels;

	private final Competitions competitions;

	private final RuleSets ruleSets;

	PointsBook(CalledListRepository lists, PointsCardRepository cards, DeductionListRepository deductions,
			CountingPanels panels, Competitions competitions, RuleSets ruleSets) {
		this.lists = lists;
		this.cards = cards;
		this.deductions = deductions;
		this.panels = panels;
		this.competitions = competitions;
		this.ruleSets = ruleSets;
	}

	/**
	 * The rules of a segment.
	 * @throws rimebook.shared.NotFoundException if its event is not judged by points
	 */
	SegmentRules rules(SegmentId segment) {
		EventView event = this.competitions.eventOf(segment);
		return this.ruleSets.of(event, event.segment(segment));
	}

	/** The whole rule set; errors as for {@link #rules}. */
	PointsRules ruleSet(SegmentId segment) {
		return this.ruleSets.of(this.competitions.eventOf(segment));
	}

	/** The counting seats of the segment in the order of the judges' numbers. */
	List<SeatView> seats(SegmentId segment) {
		return this.panels.of(segment).seats();
	}

	/** Every seat whose cards are taken, counting or not. */
	List<SeatView> senders(SegmentId segment) {
		return this.panels.of(segment).senders();
	}

	Optional<CalledList> list(PerformanceId performance) {
		return lists(performance).newest();
	}

	CalledLists lists(PerformanceId performance) {
		return new CalledLists(this.lists.findByPerformanceInOrderBySequence(List.of(performance.value())));
	}

	/** A version of the deductions; empty where there is none of that number. */
	Optional<DeductionList> deductionVersion(PerformanceId performance, int sequence) {
		return this.deductions.findByPerformanceInOrderBySequence(List.of(performance.value()))
			.stream()
			.filter((list) -> list.sequence() == sequence)
			.findFirst();
	}

	Optional<DeductionList> deductions(PerformanceId performance) {
		return newestDeductions(List.of(performance.value())).values().stream().findFirst();
	}

	Map<SeatId, PointsCard> cards(PerformanceId performance) {
		return newestCards(List.of(performance.value())).getOrDefault(performance.value(), Map.of());
	}

	/** The newest card of one seat; no other seat's is read. */
	Optional<PointsCard> card(PerformanceId performance, SeatId seat) {
		return this.cards.findByPerformanceAndSeatOrderBySequence(performance.value(), seat.value())
			.stream()
			.reduce((older, newer) -> newer);
	}

	/** The newest card of one seat for each of these; no other seat's is read. */
	Map<UUID, PointsCard> cards(Collection<UUID> performances, SeatId seat) {
		Map<UUID, PointsCard> newest = new HashMap<>();
		this.cards.findBySeatAndPerformanceInOrderBySequence(seat.value(), performances)
			.forEach((card) -> newest.put(card.performance(), card));
		return newest;
	}

	Map<UUID, CalledList> newestLists(Collection<UUID> performances) {
		Map<UUID, CalledList> newest = new HashMap<>();
		this.lists.findByPerformanceInOrderBySequence(performances)
			.forEach((list) -> newest.put(list.performance(), list));
		return newest;
	}

	Map<UUID, DeductionList> newestDeductions(Collection<UUID> performances) {
		Map<UUID, DeductionList> newest = new HashMap<>();
		this.deductions.findByPerformanceInOrderBySequence(performances)
			.forEach((list) -> newest.put(list.performance(), list));
		return newest;
	}

	Map<UUID, Map<SeatId, PointsCard>> newestCards(Collection<UUID> performances) {
		Map<UUID, Map<SeatId, PointsCard>> newest = new HashMap<>();
		this.cards.findByPerformanceInOrderBySequence(performances)
			.forEach((card) -> newest.computeIfAbsent(card.performance(), (id) -> new LinkedHashMap<>())
				.put(card.seat(), card));
		return newest;
	}

	/** Tell whether anything was sent for a performance. */
	boolean anySentFor(PerformanceId performance) {
		return this.lists.existsByPerformance(performance.value())
				|| this.cards.existsByPerformance(performance.value())
				|| this.deductions.existsByPerformance(performance.value());
	}

	/** The cards of a seat that two officials corrected. */
	List<PointsCard> corrected(SeatId seat) {
		return this.cards.findBySeatAndOrigin(seat.value(), CardOrigin.CORRECTION);
	}

	/** Every version of a seat's cards of these performances, the oldest first. */
	List<PointsCard> versions(SeatId seat, Collection<UUID> performances) {
		return this.cards.findBySeatAndPerformanceInOrderBySequence(seat.value(), performances);
	}

	/** Every element that was ever called for these performances, the oldest first. */
	List<CalledElement> everCalled(Collection<UUID> performances) {
		return this.lists.findByPerformanceInOrderBySequence(performances)
			.stream()
			.flatMap((list) -> list.elements().stream())
			.toList();
	}

}
