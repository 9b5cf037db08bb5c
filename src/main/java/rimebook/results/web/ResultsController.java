package rimebook.results.web;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.SegmentId;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.results.ResultPublication;
import rimebook.results.Signatory;
import rimebook.shared.Actor;

/** The results desk: check, post, sign, open again. */
@Controller
@RequestMapping("/desk/results/{segment}")
class ResultsController {

	private static final String PAGE = "results/desk";

	private final ResultsPage.Source pages;

	private final ResultPublication publication;

	ResultsController(ResultsPage.Source pages, ResultPublication publication) {
		this.pages = pages;
		this.publication = publication;
	}

	@GetMapping
	String show(@PathVariable SegmentId segment, @ModelAttribute("act") ActForm form, Model model) {
		ResultsPage page = this.pages.of(segment);
		form.setVersion((page.result() != null) ? page.result().version() : 0);
		model.addAttribute("page", page);
		return PAGE;
	}

	@PostMapping("/posting")
	String post(@PathVariable SegmentId segment, @ModelAttribute("act") ActForm form, BindingResult result, Model model,
			RedirectAttributes redirect, Actor actor) {
		return answer(segment,
				Submission.refused(result, () -> this.publication.post(segment, form.getVersion(), actor)),
				"results.desk.posted", model, redirect);
	}

	@PostMapping("/signature")
	String sign(@PathVariable SegmentId segment, @ModelAttribute("act") ActForm form, BindingResult result, Model model,
			RedirectAttributes redirect, Actor actor, HttpServletRequest request) {
		Signatory signatory = form.getSignatory();
		if (signatory == null) {
			result.rejectValue("signatory", "field-missing", "Say whether you sign as referee or as accountant.");
		}
		else if (!request.isUserInRole(signatory.name())) {
			throw new AccessDeniedException("Signing as " + signatory + " needs that role.");
		}
		return answer(segment, Submission.refused(result, () -> sign(segment, form.getVersion(), signatory, actor)),
				"results.desk.signed", model, redirect);
	}

	private void sign(SegmentId segment, int version, @Nullable Signatory signatory, Actor actor) {
		if (signatory != null) {
			this.publication.sign(segment, version, signatory, actor);
		}
	}

	@PostMapping("/reopening")
	String reopen(@PathVariable SegmentId segment, @ModelAttribute("act") ActForm form, BindingResult result,
			Model model, RedirectAttributes redirect, Actor actor, HttpServletRequest request) {
		if (!request.isUserInRole(Signatory.REFEREE.name())) {
			throw new AccessDeniedException("Only a referee opens a result again.");
		}
		return answer(segment,
				Submission.refused(result,
						() -> this.publication.reopen(segment, form.getVersion(), form.getReason(), actor)),
				"results.desk.reopened", model, redirect);
	}

	private String answer(SegmentId segment, boolean refused, String done, Model model, RedirectAttributes redirect) {
		if (refused) {
			model.addAttribute("page", this.pages.of(segment));
			return PAGE;
		}
		Notice.give(redirect, done);
		return "redirect:/desk/results/" + segment;
	}

}
