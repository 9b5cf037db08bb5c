package rimebook.timetable.web;

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

import rimebook.competition.CompetitionId;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.timetable.Timetables;

/** When the ice can be used, and what the times of a plan are made from. */
@Controller
@RequestMapping("/desk/timetable/{competition}")
class IceController {

	private static final String ICE = "timetable/ice";

	private static final String RULES = "timetable/rules";

	private final Timetables timetables;

	private final TimetablePages pages;

	IceController(Timetables timetables, TimetablePages pages) {
		this.timetables = timetables;
		this.pages = pages;
	}

	@GetMapping("/ice")
	String iceForm(@PathVariable CompetitionId competition, @RequestParam(defaultValue = "") String sheet,
			Model model) {
		this.pages.ice(competition, model);
		model.addAttribute("form", IceForm.of(this.pages.view(competition), sheet));
		return ICE;
	}

	@PostMapping("/ice")
	String ice(@PathVariable CompetitionId competition, @ModelAttribute("form") IceForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.timetables.set(competition, form.seen(), form.draft(), actor))) {
			this.pages.ice(competition, model);
			this.pages.since(competition, form.seen(), model);
			return ICE;
		}
		Notice.give(redirect, "timetable.plan.ice-set");
		return "redirect:/desk/timetable/" + competition;
	}

	@GetMapping("/rules")
	String rulesForm(@PathVariable CompetitionId competition, Model model) {
		this.pages.rules(competition, model);
		model.addAttribute("form", RulesForm.of(this.pages.view(competition)));
		return RULES;
	}

	@PostMapping("/rules")
	String rules(@PathVariable CompetitionId competition, @ModelAttribute("form") RulesForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.timetables.rule(competition, form.seen(), form.rules(), actor))) {
			this.pages.rules(competition, model);
			this.pages.since(competition, form.seen(), model);
			return RULES;
		}
		Notice.give(redirect, "timetable.plan.ruled");
		return "redirect:/desk/timetable/" + competition;
	}

}
