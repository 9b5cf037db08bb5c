package rimebook.points;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.panels.SeatId;
import rimebook.paper.PaperCards;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceView;
import rimebook.shared.Acts;
import rimebook.tabulation.points.SegmentRules;

/** Paper cards of points judging: a grade for each element called, each component. */
@Component
class PointsPaper implements PaperCards {

	private final PointsBook book;

	private final PointsCardRepository cards;

	private final Acts acts;

	PointsPaper(PointsBook book, PointsCardRepository cards, Acts acts) {
		this.acts = acts;
		this.book = book;
		this.cards = cards;
	}

	@Override
	public boolean isFor(EventView event) {
		return event.judging().method().isPoints();
	}

	@Override
	public List<PaperCards.CardLine> lines(PerformanceView performance) {
		Optional<CalledList> list = this.book.list(performance.id()).filter((called) -> !called.elements().isEmpty());
		if (list.isEmpty()) {
			return List.of();
		}
		SegmentRules rules = this.book.rules(performance.segment());
		int most = rules.values().grades().most();
		List<PaperCards.CardLine> lines = new ArrayList<>();
		list.get().view().counting().forEach((element) -> lines.add(GradedLine.of(element, most)));
		rules.components().forEach((component) -> lines.add(GradedLine.ofComponent(component.name())));
		return lines;
	}

	@Override
	public Map<SeatId, PaperCards.HeldCard> held(PerformanceView performance) {
		CalledLists lists = this.book.lists(performance.id());
		Map<SeatId, PaperCards.HeldCard> held = new LinkedHashMap<>();
		this.book.cards(performance.id()).forEach((seat, card) -> held.put(seat, card.held(lists)));
		return held;
	}

	@Override
	public void require(PerformanceView performance, PaperCards.KeyedCard card) {
		new PointsCardCheck(this.book.rules(performance.segment()),
				this.book.list(performance.id()).map(CalledList::view))
			.require(GradedLine.marks(card));
	}

	@Override
	public void keep(PerformanceView performance, SeatId seat, int sequence, PaperCards.KeyedCard card) {
		this.cards.save(new PointsCard(this.acts.nextId(), performance.id(), seat, sequence,
				new PointsCard.Given(this.book.list(performance.id()).map(CalledList::sequence).orElse(0),
						GradedLine.marks(card)),
				new PointsCard.Receipt(CardOrigin.KEYED, this.acts.now())));
	}

	@Override
	public String words(PerformanceView performance, PaperCards.KeyedCard card) {
		return PointsWords.of(GradedLine.marks(card),
				this.book.list(performance.id()).map(CalledList::elements).orElse(List.of()));
	}

}
