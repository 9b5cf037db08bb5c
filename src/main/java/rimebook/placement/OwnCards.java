package rimebook.placement;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.springframework.stereotype.Component;

import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceView;
import rimebook.tabulation.CardMarks;

/** The cards of two marks that one seat has given; another seat’s are never read. */
@Component
public class OwnCards {

	private final PanelCards cards;

	OwnCards(PanelCards cards) {
		this.cards = cards;
	}

	/** The newest card of the seat for each of these performances that has one. */
	public Map<PerformanceId, Card> of(SeatId seat, List<PerformanceView> performances) {
		Map<PerformanceId, Card> own = new HashMap<>();
		this.cards.newestOf(seat, performances)
			.forEach((performance, card) -> own.put(new PerformanceId(performance), card.view()));
		return own;
	}

	/**
	 * The version of a card that counts now.
	 *
	 * @param corrected whether two officials put it in after closing
	 */
	public record Card(SeatId seat, CardMarks marks, int sequence, Instant receivedAt, boolean corrected) {
	}

}
