package rimebook.tablets;

import java.util.UUID;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.remarks.Remarks;

/**
 * The judge's card: one page for the whole day; everything that moves comes as JSON. A
 * way of judging without a card on tablets is judged on paper, and the page says no more.
 */
@Controller
class CardController {

	private final Panels panels;

	private final Competitions competitions;

	private final TabletCards cards;

	CardController(Panels panels, Competitions competitions, TabletCards cards) {
		this.panels = panels;
		this.competitions = competitions;
		this.cards = cards;
	}

	@GetMapping("/judge/card")
	String card(@OwnSeat UUID id, Model model) {
		SeatView seat = this.panels.seat(new SeatId(id));
		EventView event = this.competitions.event(seat.event());
		model.addAttribute("seat", seat);
		model.addAttribute("event", event);
		model.addAttribute("remarkKinds", Remarks.RemarkKind.values());
		model.addAttribute("zone", this.competitions.competition(event.competition()).zone().getId());
		return this.cards.of(event).map(TabletCard::page).orElse("tablets/on-paper");
	}

}
