package rimebook.paper;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;

/** Reads what was keyed in from paper for a performance. */
@Component
public class CardKeyings {

	private final CardKeyingRepository keyings;

	CardKeyings(CardKeyingRepository keyings) {
		this.keyings = keyings;
	}

	/** Tell whether anything was keyed in for a performance. */
	public boolean any(PerformanceId performance) {
		return this.keyings.existsByPerformance(performance.value());
	}

	/** What was keyed in for a performance. */
	public OfPerformance of(PerformanceId performance) {
		return new OfPerformance(this.keyings.findByPerformanceOrderByNumber(performance.value())
			.stream()
			.collect(Collectors.groupingBy(CardKeying::seat)));
	}

	/** The keyings of one performance by seat. */
	public record OfPerformance(Map<SeatId, List<CardKeying>> bySeat) {

		/** How far a seat’s card has come, with the card that was received of it. */
		public PaperState state(SeatId seat, PaperCards.@Nullable HeldCard card) {
			return PaperState.of(of(seat), card);
		}

		/** Those of one seat, the oldest first. */
		public List<CardKeying> of(SeatId seat) {
			return this.bySeat.getOrDefault(seat, List.of());
		}

	}

}
