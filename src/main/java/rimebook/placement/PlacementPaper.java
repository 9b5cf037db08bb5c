package rimebook.placement;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.panels.SeatId;
import rimebook.paper.PaperCards;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceView;
import rimebook.shared.Acts;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Paper cards of two marks. */
@Component
class PlacementPaper implements PaperCards {

	private final PanelCards cards;

	private final CardSubmissionRepository submissions;

	private final Acts acts;

	PlacementPaper(PanelCards cards, CardSubmissionRepository submissions, Acts acts) {
		this.acts = acts;
		this.cards = cards;
		this.submissions = submissions;
	}

	@Override
	public boolean isFor(EventView event) {
		return event.judging().method().isPlacement();
	}

	@Override
	public List<PaperCards.CardLine> lines(PerformanceView performance) {
		return MarkLine.BOTH;
	}

	@Override
	public Map<SeatId, PaperCards.HeldCard> held(PerformanceView performance) {
		Map<SeatId, PaperCards.HeldCard> held = new LinkedHashMap<>();
		this.cards.newestOf(performance.id()).forEach((seat, card) -> held.put(seat, card.held()));
		return held;
	}

	@Override
	public void require(PerformanceView performance, PaperCards.KeyedCard card) {
		for (PaperCards.CardLine line : MarkLine.BOTH) {
			Integer value = card.value(line);
			if (value == null || line.read(line.words(value)).isEmpty()) {
				throw RuleViolationException.ofField("mark-not-valid", line.key(),
						Sentence.of("placement.mark-needed"));
			}
		}
		this.cards.requireMarksTaken(this.cards.eventOf(performance.segment()), MarkLine.marks(card));
	}

	@Override
	public void keep(PerformanceView performance, SeatId seat, int sequence, PaperCards.KeyedCard card) {
		this.submissions.save(new CardSubmission(this.acts.nextId(), performance.id(), seat, sequence,
				MarkLine.marks(card), new CardSubmission.Receipt(CardOrigin.KEYED, this.acts.now())));
	}

	@Override
	public String words(PerformanceView performance, PaperCards.KeyedCard card) {
		return MarkWords.of(MarkLine.marks(card));
	}

}
