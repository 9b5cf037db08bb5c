package rimebook.fees.web;

import java.util.List;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.fees.FeeRules;
import rimebook.fees.RulesView;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/** What a competition charges, and what an event of it charges otherwise. */
@Controller
@RequestMapping("/desk/fees")
class FeeRulesController {

	private final FeeRules rules;

	private final Competitions competitions;

	FeeRulesController(FeeRules rules, Competitions competitions) {
		this.rules = rules;
		this.competitions = competitions;
	}

	@GetMapping("/{competition}/rules")
	String show(@PathVariable CompetitionId competition, Model model) {
		RulesView known = this.rules.of(competition);
		model.addAttribute("rulesForm", RulesForm.of(known.defaults(), known.currency(), zoned(competition).zone()));
		return page(competition, known, model);
	}

	@PostMapping("/{competition}/rules")
	String set(@PathVariable CompetitionId competition, @ModelAttribute("rulesForm") RulesForm form,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		CompetitionView view = zoned(competition);
		if (Submission.refused(result,
				() -> this.rules.set(form.order(view, null, TypedFees.currency(form.currency())), actor))) {
			return page(competition, this.rules.of(competition), model);
		}
		Notice.give(redirect, "fees.rules.kept");
		return "redirect:/desk/fees/" + competition;
	}

	@GetMapping("/event/{event}")
	String showEvent(@PathVariable EventId event, Model model) {
		EventView view = this.competitions.event(event);
		RulesView known = this.rules.of(view.competition());
		model.addAttribute("rulesForm",
				RulesForm.of(known.own(event), known.currency(), zoned(view.competition()).zone()));
		return eventPage(view, known, model);
	}

	@PostMapping("/event/{event}")
	String setEvent(@PathVariable EventId event, @ModelAttribute("rulesForm") RulesForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		EventView view = this.competitions.event(event);
		RulesView known = this.rules.of(view.competition());
		CompetitionView competition = zoned(view.competition());
		if (Submission.refused(result,
				() -> this.rules.set(form.order(competition, event, TypedFees.known(known)), actor))) {
			return eventPage(view, known, model);
		}
		Notice.give(redirect, "fees.rules.kept");
		return "redirect:/desk/fees/" + view.competition() + "/rules";
	}

	private CompetitionView zoned(CompetitionId id) {
		return this.competitions.competition(id);
	}

	private String page(CompetitionId id, RulesView known, Model model) {
		List<EventRow> events = this.competitions.events(id)
			.stream()
			.map((event) -> new EventRow(event, !known.own(event.id()).terms().isEmpty()))
			.toList();
		model.addAttribute("competition", zoned(id));
		model.addAttribute("known", known);
		model.addAttribute("events", events);
		return "fees/rules";
	}

	private String eventPage(EventView event, RulesView known, Model model) {
		model.addAttribute("competition", zoned(event.competition()));
		model.addAttribute("event", event);
		model.addAttribute("known", known);
		return "fees/event-rules";
	}

	/**
	 * An event of the competition.
	 *
	 * @param own whether it says something of its own
	 */
	record EventRow(EventView event, boolean own) {
	}

}
