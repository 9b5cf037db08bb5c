package rimebook.panels.web;

import java.util.List;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.panels.Panels;

/** Every event with the state of its panel. */
@Controller
class PanelListController {

	private final Panels panels;

	private final Competitions competitions;

	PanelListController(Panels panels, Competitions competitions) {
		this.panels = panels;
		this.competitions = competitions;
	}

	@GetMapping("/desk/panel")
	String list(Model model) {
		model.addAttribute("competitions", this.competitions.all().stream().map(this::competition).toList());
		return "panels/list";
	}

	private CompetitionPanels competition(CompetitionView competition) {
		return new CompetitionPanels(competition.name(),
				this.competitions.events(competition.id()).stream().map(this::panel).toList());
	}

	private EventPanel panel(EventView event) {
		return new EventPanel(event.id(), event.name(), event.judging().judges(),
				this.panels.missing(event.id()).size());
	}

	/** The panels of one competition. */
	record CompetitionPanels(String name, List<EventPanel> events) {
	}

	/** The panel of one event, and how many seats must still be filled. */
	record EventPanel(EventId id, String name, int judges, int missing) {
	}

}
