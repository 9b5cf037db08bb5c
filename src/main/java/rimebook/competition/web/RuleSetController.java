package rimebook.competition.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.tabulation.points.PointsRules;

/** The rule set of an event judged by points, to read: every figure with its source. */
@Controller
@RequestMapping("/desk/competitions/{competition}/events/{event}/rules")
class RuleSetController {

	private final Competitions competitions;

	private final RuleSets ruleSets;

	RuleSetController(Competitions competitions, RuleSets ruleSets) {
		this.competitions = competitions;
		this.ruleSets = ruleSets;
	}

	@ModelAttribute("competition")
	CompetitionView competition(@PathVariable CompetitionId competition) {
		return this.competitions.competition(competition);
	}

	@ModelAttribute("event")
	EventView event(@PathVariable CompetitionId competition, @PathVariable EventId event) {
		EventView view = this.competitions.event(event);
		if (!view.competition().equals(competition)) {
			throw NotFoundException.of("event", event);
		}
		return view;
	}

	@GetMapping
	String rules(@ModelAttribute("event") EventView event, Model model) {
		PointsRules rules = this.ruleSets.of(event);
		model.addAttribute("rules", rules);
		model.addAttribute("page", new RulesPage(rules));
		return "competition/rules";
	}

	@GetMapping("/values")
	String values(@ModelAttribute("event") EventView event, @RequestParam(defaultValue = "") String search,
			Model model) {
		String words = Required.optional("search", search, 100);
		PointsRules rules = this.ruleSets.of(event);
		model.addAttribute("rules", rules);
		model.addAttribute("search", words);
		model.addAttribute("values", ValueRow.of(rules, words));
		return "competition/values";
	}

}
