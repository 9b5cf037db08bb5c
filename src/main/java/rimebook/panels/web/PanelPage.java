package rimebook.panels.web;

import java.util.List;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.panels.PanelView;
import rimebook.panels.Panels;
import rimebook.panels.SeatGuesses;
import rimebook.panels.SeatTakeoverQuestions;

/** Gathers what the page of one event's panel shows. */
@Component
class PanelPage {

	private final Panels panels;

	private final Competitions competitions;

	private final SeatGuesses guesses;

	private final SeatTakeoverQuestions questions;

	private final PanelCopy copy;

	private final SeatRows seats;

	PanelPage(Panels panels, Competitions competitions, SeatGuesses guesses, SeatTakeoverQuestions questions,
			PanelCopy copy, SeatRows seats) {
		this.panels = panels;
		this.competitions = competitions;
		this.guesses = guesses;
		this.questions = questions;
		this.copy = copy;
		this.seats = seats;
	}

	/** The page with what was chosen and what was wrong with it. */
	String show(EventId id, PanelForm form, BindingResult errors, Model model) {
		EventView event = this.competitions.event(id);
		PanelView panel = this.panels.ofEvent(id);
		List<SeatRow> rows = this.seats.of(panel, form, errors);
		model.addAttribute("form", form);
		model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", errors);
		model.addAttribute("event", event);
		model.addAttribute("competition", this.competitions.competition(event.competition()));
		model.addAttribute("panel", panel);
		model.addAttribute("guesses", this.guesses.recent());
		model.addAttribute("questions", this.questions.ofEvent(id));
		model.addAttribute("zone", this.competitions.competition(event.competition()).zone());
		model.addAttribute("rows", rows);
		model.addAttribute("full", rows.stream().allMatch(SeatRow::taken));
		model.addAttribute("others", this.copy.offered(event));
		model.addAttribute("officials", this.seats.officials());
		return "panels/panel";
	}

}
