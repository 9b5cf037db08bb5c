package rimebook.placement;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.paper.CardKeyings;
import rimebook.paper.PaperCards;
import rimebook.paper.PaperState;
import rimebook.performances.Amendment;
import rimebook.performances.CardBook;
import rimebook.performances.CardOrigin;
import rimebook.performances.ClosedMarks;
import rimebook.performances.CountingPanel;
import rimebook.performances.CountingPanels;
import rimebook.performances.JudgesCard;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceView;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.PlacementRules;
import rimebook.wording.Sentence;

/** The cards of a panel: for each performance and seat the newest version counts. */
@Component
class PanelCards implements CardBook {

	private final CardSubmissionRepository submissions;

	private final CountingPanels panels;

	private final Competitions competitions;

	private final CardKeyings keyings;

	private final Entries entries;

	PanelCards(CardSubmissionRepository submissions, CountingPanels panels, Competitions competitions,
			CardKeyings keyings, Entries entries) {
		this.submissions = submissions;
		this.panels = panels;
		this.competitions = competitions;
		this.keyings = keyings;
		this.entries = entries;
	}

	/** Every seat whose cards are taken, counting or not. */
	List<SeatView> senders(EventView event, SegmentId segment) {
		return this.panels.of(event, segment).senders();
	}

	@Override
	public boolean isFor(EventView event) {
		return event.judging().method().isPlacement();
	}

	@Override
	public boolean allowsAbsentCard() {
		return false;
	}

	@Override
	public boolean anySentFor(PerformanceId performance) {
		return this.submissions.existsByPerformance(performance.value()) || this.keyings.any(performance);
	}

	/** The newest card of each seat. */
	Map<SeatId, CardSubmission> newestOf(PerformanceId performance) {
		return newestOf(List.of(performance.value())).getOrDefault(performance.value(), Map.of());
	}

	/** The newest card of each seat for several performances, in one query. */
	Map<UUID, Map<SeatId, CardSubmission>> newestOf(Collection<UUID> performances) {
		Map<UUID, Map<SeatId, CardSubmission>> newest = new HashMap<>();
		for (CardSubmission card : this.submissions.findByPerformanceInOrderBySequence(performances)) {
			newest.computeIfAbsent(card.performance(), (id) -> new LinkedHashMap<>()).put(card.seat(), card);
		}
		return newest;
	}

	/**
	 * The newest card of one seat for each of these performances; no other seat's is
	 * read.
	 */
	Map<UUID, CardSubmission> newestOf(SeatId seat, Collection<PerformanceView> performances) {
		Map<UUID, CardSubmission> newest = new HashMap<>();
		List<UUID> ids = performances.stream().map((performance) -> performance.id().value()).toList();
		this.submissions.findBySeatAndPerformanceInOrderBySequence(seat.value(), ids)
			.forEach((card) -> newest.put(card.performance(), card));
		return newest;
	}

	/** The event of a segment, for those who ask it several things. */
	EventView eventOf(SegmentId segment) {
		return this.competitions.eventOf(segment);
	}

	/** Refuse a card of two marks for an event that has none. */
	void requirePlacement(EventView event) {
		if (event.isJudgedByPoints()) {
			throw new RuleViolationException("points-card-expected", Sentence.of("placement.points-card-expected"));
		}
		if (!isFor(event)) {
			throw new RuleViolationException("another-card-expected", Sentence.of("placement.another-card-expected"));
		}
	}

	/**
	 * Refuse a mark of 0.0 where the event takes it for "not skated": nothing could be
	 * tabulated with it.
	 * @throws RuleViolationException {@code zero-mark} on the field of the mark
	 */
	void requireMarksTaken(EventView event, CardMarks marks) {
		if (event.judging().policies().zeroMark() != PlacementRules.ZeroMark.REFUSE) {
			return;
		}
		PaperCards.CardLine zero = (marks.first() == 0) ? MarkLine.FIRST : MarkLine.SECOND;
		if (marks.first() == 0 || marks.second() == 0) {
			throw new RuleViolationException("zero-mark", zero.key(), Sentence.of("placement.zero-mark"));
		}
	}

	@Override
	public Map<SeatId, CardBook.SentCard> sentFor(PerformanceView performance) {
		Map<SeatId, CardBook.SentCard> sent = new LinkedHashMap<>();
		newestOf(performance.id()).forEach((seat, card) -> sent.put(seat,
				new CardBook.SentCard(MarkWords.of(card.marks()), card.sequence(), card.acknowledged().receivedAt())));
		return sent;
	}

	@Override
	public List<Sentence> missing(PerformanceView performance, SeatView seat) {
		return missing(performance, List.of(seat));
	}

	@Override
	public List<Sentence> missing(PerformanceView performance, List<SeatView> seats) {
		Map<SeatId, CardSubmission> cards = newestOf(performance.id());
		CardKeyings.OfPerformance keyed = this.keyings.of(performance.id());
		boolean zeroRefused = this.competitions.eventOf(performance.segment())
			.judging()
			.policies()
			.zeroMark() == PlacementRules.ZeroMark.REFUSE;
		return seats.stream()
			.flatMap((seat) -> missing(seat, cards.get(seat.id()), keyed)
				.or(() -> zeroRefused ? zero(seat, cards.get(seat.id()), performance) : Optional.empty())
				.stream())
			.toList();
	}

	/** A 0.0 from before it was refused on arrival cannot be tabulated. */
	private Optional<Sentence> zero(SeatView seat, @Nullable CardSubmission card, PerformanceView performance) {
		return Optional.ofNullable(card)
			.map(CardSubmission::marks)
			.filter((marks) -> marks.first() == 0 || marks.second() == 0)
			.map((marks) -> Sentence.of("placement.zero-mark-sent", seat.spoken(),
					this.entries.entry(performance.entry()).team().name(), MarkWords.of(marks)));
	}

	private static Optional<Sentence> missing(SeatView seat, @Nullable CardSubmission card,
			CardKeyings.OfPerformance keyed) {
		PaperState paper = keyed.state(seat.id(), (card != null) ? card.held() : null);
		return (card == null || paper.isUnsettled()) ? Optional.of(paper.behind(seat.spoken())) : Optional.empty();
	}

	@Override
	public List<String> soFar(PerformanceView performance, CountingPanel panel) {
		Map<SeatId, CardSubmission> cards = newestOf(performance.id());
		return panel.senders()
			.stream()
			.flatMap((seat) -> Stream.ofNullable(cards.get(seat.id()))
				.map((card) -> seat.label() + ": " + MarkWords.of(card.marks())))
			.toList();
	}

	/** The cards in words for the record, in the order of the seats. */
	@Override
	public String inWords(PerformanceView performance, CountingPanel panel) {
		Map<SeatId, CardSubmission> cards = newestOf(performance.id());
		return panel.seats()
			.stream()
			.map((seat) -> seat.label() + ": " + MarkWords.of(Objects.requireNonNull(cards.get(seat.id())).marks()))
			.collect(Collectors.joining("; "));
	}

	@Override
	public Map<PerformanceId, ClosedMarks.PanelMarks> closed(SegmentId segment, CountingPanel panel,
			List<PerformanceView> performances, Amendment.@Nullable SupposedChange<?> supposed) {
		List<SeatView> seats = panel.seats();
		Map<UUID, Map<SeatId, CardSubmission>> newest = newestOf(
				performances.stream().map((performance) -> performance.id().value()).toList());
		Map<PerformanceId, ClosedMarks.PanelMarks> closed = new HashMap<>();
		for (PerformanceView performance : performances) {
			Map<SeatId, CardSubmission> cards = newest.getOrDefault(performance.id().value(), Map.of());
			closed.put(performance.id(),
					new ClosedMarks.PanelMarks(seats.stream()
						.map((seat) -> supposed(supposed, performance.id(), seat)
							.orElseGet(() -> Objects.requireNonNull(cards.get(seat.id())).marks()))
						.toList()));
		}
		return closed;
	}

	private static Optional<CardMarks> supposed(Amendment.@Nullable SupposedChange<?> supposed,
			PerformanceId performance, SeatView seat) {
		return (supposed != null && supposed.amendment() instanceof MarksAmendment other
				&& supposed.performance().equals(performance) && seat.id().equals(supposed.seat()))
						? Optional.of(other.marks()) : Optional.empty();
	}

	@Override
	public List<CardBook.CorrectedCard> corrected(SeatId seat) {
		List<CardSubmission> corrected = this.submissions.findBySeatAndOrigin(seat.value(), CardOrigin.CORRECTION);
		if (corrected.isEmpty()) {
			return List.of();
		}
		List<CardSubmission> versions = this.submissions.findBySeatAndPerformanceInOrderBySequence(seat.value(),
				corrected.stream().map(CardSubmission::performance).distinct().toList());
		return corrected.stream()
			.map((card) -> new CardBook.CorrectedCard(card.getId(), new PerformanceId(card.performance()),
					MarkWords.of(JudgesCard.before(card, versions).marks()), MarkWords.of(card.marks())))
			.toList();
	}

}
