package rimebook.competition.web;

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
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/** An administrator's way back from final or archived, with a reason. */
@Controller
@RequestMapping("/desk/competitions/{competition}/taking-back")
class EndController {

	private static final String PAGE = "competition/taking-back";

	private final Competitions competitions;

	EndController(Competitions competitions) {
		this.competitions = competitions;
	}

	@GetMapping
	String ask(@PathVariable CompetitionId competition, Model model) {
		CompetitionView view = page(competition, model);
		model.addAttribute("form", new ReasonForm(view.version(), ""));
		return PAGE;
	}

	@PostMapping
	String takeBack(@PathVariable CompetitionId competition, @ModelAttribute("form") ReasonForm form,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result,
				() -> this.competitions.takeBack(competition, form.version(), form.reason(), actor))) {
			page(competition, model);
			return PAGE;
		}
		Notice.give(redirect, "competition.moved." + this.competitions.competition(competition).state());
		return "redirect:/desk/competitions/" + competition;
	}

	private CompetitionView page(CompetitionId id, Model model) {
		CompetitionView view = this.competitions.competition(id);
		model.addAttribute("competition", view);
		model.addAttribute("before", view.state().before().orElse(null));
		return view;
	}

}
