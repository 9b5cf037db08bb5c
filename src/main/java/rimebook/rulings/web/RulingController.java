package rimebook.rulings.web;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.security.access.AccessDeniedException;
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

import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.rulings.QuestionReleases;
import rimebook.rulings.QuestionView;
import rimebook.rulings.Rulings;
import rimebook.shared.Actor;

/** A ruling on a question, given at the desk by the referee alone. */
@Controller
@RequestMapping("/desk/rulings/{question}/ruling")
class RulingController {

	private static final String RULE = "rulings/rule";

	private final Rulings rulings;

	private final QuestionReleases releases;

	private final RulingsPages pages;

	RulingController(Rulings rulings, QuestionReleases releases, RulingsPages pages) {
		this.releases = releases;
		this.rulings = rulings;
		this.pages = pages;
	}

	@ModelAttribute
	void requireReferee(@PathVariable QuestionView.QuestionId question, HttpServletRequest request) {
		if (!request.isUserInRole(RulingsController.REFEREE)) {
			throw new AccessDeniedException("Only a referee gives a ruling.");
		}
	}

	@GetMapping
	String ruleForm(@PathVariable QuestionView.QuestionId question, Model model) {
		QuestionView view = this.rulings.question(question);
		this.pages.question(view, model);
		model.addAttribute("form", RulingForm.of(view));
		return RULE;
	}

	@PostMapping
	String rule(@PathVariable QuestionView.QuestionId question, @ModelAttribute("form") RulingForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.rulings.rule(form.ruling(question), actor))) {
			this.pages.question(this.rulings.question(question), model);
			return RULE;
		}
		Notice.give(redirect, (form.getSeen() == 0) ? "rulings.rule.given" : "rulings.rule.superseded");
		return "redirect:/desk/rulings/" + question;
	}

	/** Let commentators speak of an open question, or no longer. */
	@PostMapping("/release")
	String release(@PathVariable QuestionView.QuestionId question, @RequestParam boolean released, Actor actor,
			RedirectAttributes redirect) {
		this.releases.release(question, released, actor);
		Notice.give(redirect, released ? "rulings.release.released" : "rulings.release.withheld");
		return "redirect:/desk/rulings/" + question;
	}

}
