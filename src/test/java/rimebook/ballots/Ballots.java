package rimebook.ballots;

import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.Amendment;
import rimebook.performances.CardBook;
import rimebook.performances.ClosedMarks;
import rimebook.performances.CountingPanel;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.wording.Sentence;

/**
 * The cards of a way of judging that exists nowhere: each judge gives a whole number from
 * 0 to 10, and the sum decides. Kept in memory, since what is shown is that nothing but
 * this package has to know of it.
 */
class Ballots implements CardBook {

	static final JudgingMethod METHOD = new JudgingMethod("BALLOT");

	private final Map<PerformanceId, Map<SeatId, Sent>> sent = new ConcurrentHashMap<>();

	private final PerformanceRegister performances;

	private final Clock clock;

	Ballots(PerformanceRegister performances, Clock clock) {
		this.performances = performances;
		this.clock = clock;
	}

	/** Take a judge's number. */
	void give(PerformanceId id, SeatId seat, int number) {
		PerformanceRegister.requireOnIce(this.performances.find(id));
		this.sent.computeIfAbsent(id, (performance) -> new ConcurrentHashMap<>())
			.put(seat, new Sent(number, this.clock.instant()));
	}

	@Override
	public boolean isFor(EventView event) {
		return event.judging().method().equals(METHOD);
	}

	@Override
	public boolean anySentFor(PerformanceId performance) {
		return !cards(performance).isEmpty();
	}

	@Override
	public Map<SeatId, CardBook.SentCard> sentFor(PerformanceView performance) {
		Map<SeatId, CardBook.SentCard> cards = new LinkedHashMap<>();
		cards(performance.id()).forEach(
				(seat, card) -> cards.put(seat, new CardBook.SentCard(String.valueOf(card.number()), 1, card.at())));
		return cards;
	}

	@Override
	public List<Sentence> missing(PerformanceView performance, SeatView seat) {
		return missing(performance, List.of(seat));
	}

	@Override
	public List<Sentence> missing(PerformanceView performance, List<SeatView> seats) {
		return seats.stream()
			.filter((seat) -> !cards(performance.id()).containsKey(seat.id()))
			.map(SeatView::spoken)
			.toList();
	}

	@Override
	public List<String> soFar(PerformanceView performance, CountingPanel panel) {
		return panel.senders()
			.stream()
			.filter((seat) -> cards(performance.id()).containsKey(seat.id()))
			.map((seat) -> seat.label() + ": " + number(performance.id(), seat))
			.toList();
	}

	@Override
	public String inWords(PerformanceView performance, CountingPanel panel) {
		return soFar(performance, panel).stream().collect(Collectors.joining("; "));
	}

	@Override
	public Map<PerformanceId, Sum> closed(SegmentId segment, CountingPanel panel, List<PerformanceView> performances,
			Amendment.@Nullable SupposedChange<?> supposed) {
		List<SeatView> seats = panel.seats();
		Map<PerformanceId, Sum> closed = new HashMap<>();
		performances.forEach((performance) -> closed.put(performance.id(),
				new Sum(seats.stream().mapToInt((seat) -> number(performance.id(), seat)).sum())));
		return closed;
	}

	@Override
	public List<CardBook.CorrectedCard> corrected(SeatId seat) {
		return List.of();
	}

	@Override
	public boolean allowsAbsentCard() {
		return false;
	}

	private int number(PerformanceId performance, SeatView seat) {
		return Objects.requireNonNull(cards(performance).get(seat.id())).number();
	}

	private Map<SeatId, Sent> cards(PerformanceId performance) {
		return this.sent.getOrDefault(performance, Map.of());
	}

	/** What all judges gave a team together. */
	record Sum(int value) implements ClosedMarks.Others {
	}

	private record Sent(int number, Instant at) {
	}

}
