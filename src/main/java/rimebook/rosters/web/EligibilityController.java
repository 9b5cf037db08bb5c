package rimebook.rosters.web;

import java.util.Optional;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.rosters.EligibilitySet;
import rimebook.rosters.EligibilitySets;
import rimebook.rosters.EventEligibility;
import rimebook.rosters.RulesView;
import rimebook.shared.Actor;

/**
 * What an event asks of its rosters: copied from a set, and every figure changed at will.
 */
@Controller
@RequestMapping("/desk/rosters/eligibility/{event}")
class EligibilityController {

	private final EventEligibility eligibility;

	private final EligibilitySets sets;

	private final Competitions competitions;

	EligibilityController(EventEligibility eligibility, EligibilitySets sets, Competitions competitions) {
		this.eligibility = eligibility;
		this.sets = sets;
		this.competitions = competitions;
	}

	/** With a set its figures stand in the form; nothing is written before it is sent. */
	@GetMapping
	String show(@PathVariable EventId event, @RequestParam(defaultValue = "") String set, Model model) {
		CompetitionView competition = competition(event);
		RulesView known = this.eligibility.of(event);
		Optional<EligibilitySet> chosen = this.sets.set(set);
		model.addAttribute("rulesForm", chosen
			.map((one) -> RulesForm.of(one, one.rules(competition.facts().firstDay()), known, competition.zone()))
			.orElseGet(() -> RulesForm.of(known, competition.zone())));
		model.addAttribute("copying", chosen.isPresent());
		return page(event, model);
	}

	@PostMapping
	String set(@PathVariable EventId event, @ModelAttribute("rulesForm") RulesForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		CompetitionView competition = competition(event);
		if (Submission.refused(result, () -> this.eligibility.set(form.order(event, competition.zone()), actor))) {
			model.addAttribute("copying", false);
			return page(event, model);
		}
		Notice.give(redirect, "rosters.rules.kept");
		return "redirect:/desk/rosters/" + competition.id();
	}

	private CompetitionView competition(EventId event) {
		return this.competitions.competition(this.competitions.event(event).competition());
	}

	private String page(EventId id, Model model) {
		EventView event = this.competitions.event(id);
		RulesForm form = (RulesForm) model.getAttribute("rulesForm");
		model.addAttribute("event", event);
		model.addAttribute("competition", competition(id));
		model.addAttribute("sets", this.sets.all());
		model.addAttribute("copied",
				this.sets.set((form != null && form.copiedFrom() != null) ? form.copiedFrom() : "").orElse(null));
		return "rosters/eligibility";
	}

}
