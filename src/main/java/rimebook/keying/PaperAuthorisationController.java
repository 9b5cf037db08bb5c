package rimebook.keying;

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

import rimebook.competition.SegmentId;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.points.ListAuthorisations;
import rimebook.shared.Actor;

/**
 * The technical controller's signature on paper, seen and confirmed at the keying desk.
 */
@Controller
@RequestMapping("/desk/keying/{segment}/authorisation")
class PaperAuthorisationController {

	private static final String VIEW = "keying/authorisation";

	private final KeyingComposer pages;

	private final ListAuthorisations authorisations;

	PaperAuthorisationController(KeyingComposer pages, ListAuthorisations authorisations) {
		this.pages = pages;
		this.authorisations = authorisations;
	}

	@GetMapping
	String ask(@PathVariable SegmentId segment, @RequestParam(defaultValue = "") String performance, Actor actor,
			Model model) {
		KeyingPage page = this.pages.byPoints(segment, performance, actor);
		model.addAttribute("page", page);
		model.addAttribute("form", AuthorisationForm.of(page));
		return VIEW;
	}

	@PostMapping
	String confirm(@PathVariable SegmentId segment, @ModelAttribute("form") AuthorisationForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		KeyingPage page = this.pages.byPoints(segment, form.getPerformance(), actor);
		model.addAttribute("page", page);
		form.isAbout(page, errors);
		if (Submission.refused(errors, () -> this.authorisations.confirmPaper(form.performanceGiven(),
				form.getSequence(), form.getController(), actor))) {
			return VIEW;
		}
		Notice.give(redirect, "keying.desk.authorisation.received");
		return "redirect:/desk/keying/" + segment + page.query();
	}

}
