package rimebook.tablets;

import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.EventView;

/** Finds the card of an event by the way in which it is judged. */
@Component
class TabletCards {

	private final List<TabletCard> cards;

	TabletCards(List<TabletCard> cards) {
		this.cards = cards;
	}

	/** Empty where cards of that way of judging are never on tablets. */
	Optional<TabletCard> of(EventView event) {
		return this.cards.stream().filter((card) -> card.isFor(event)).findFirst();
	}

}
