package rimebook.protests.web;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
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
import rimebook.pages.Given;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.StatusCorrection;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.protests.ProtestView;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Proposals to set how a team came through: withdrawn, not finished, disqualified, and
 * the way back. What it would change is shown at once, to the one who proposes too.
 */
@Controller
@RequestMapping("/desk/protests/{segment}/corrections/new/status")
class StatusCorrectionsController {

	private static final String VIEW = "protests/propose-status";

	private final ProtestsComposer pages;

	private final StatusChoices choices;

	private final Corrections corrections;

	StatusCorrectionsController(ProtestsComposer pages, StatusChoices choices, Corrections corrections) {
		this.pages = pages;
		this.choices = choices;
		this.corrections = corrections;
	}

	@GetMapping
	String ask(@PathVariable SegmentId segment, @ModelAttribute("form") StatusCorrectionForm form, Model model,
			HttpServletRequest request) {
		RestrictedAct.CORRECT.require(request);
		return page(segment, form, model);
	}

	@PostMapping
	String propose(@PathVariable SegmentId segment, @ModelAttribute("form") StatusCorrectionForm form,
			BindingResult result, Model model, RedirectAttributes redirect, HttpServletRequest request, Actor actor) {
		RestrictedAct.CORRECT.require(request);
		CorrectionView[] proposed = new CorrectionView[1];
		if (Submission.refused(result, () -> proposed[0] = this.corrections.propose(proposal(segment, form), actor))) {
			return page(segment, form, model);
		}
		Notice.give(redirect, "protests.propose.proposed");
		return "redirect:/desk/protests/" + segment + "/corrections/" + proposed[0].id();
	}

	private Corrections.ProposeCorrection proposal(SegmentId segment, StatusCorrectionForm form) {
		String given = Given.text(form.performance());
		if (this.choices.teams(segment).stream().noneMatch((one) -> one.value().equals(given))) {
			throw new RuleViolationException("performance-not-done", "performance",
					Sentence.of("protests.performance-not-done"));
		}
		PerformanceStatus status = form.status();
		if (status == null) {
			throw new RuleViolationException("field-missing", "status", Sentence.of("protests.status-missing"));
		}
		return new Corrections.ProposeCorrection(StatusCorrection.StatusAmendment.on(PerformanceId.of(given), status),
				Given.text(form.reason()), "", protest(form));
	}

	private static ProtestView.@Nullable ProtestId protest(StatusCorrectionForm form) {
		String given = Given.text(form.protest());
		return given.isBlank() ? null
				: Given.read("protest", given, ProtestView.ProtestId::of, Sentence.of("protests.protest-missing"));
	}

	private String page(SegmentId segment, StatusCorrectionForm form, Model model) {
		model.addAttribute("page", this.pages.of(segment));
		model.addAttribute("teams", this.choices.teams(segment));
		model.addAttribute("statuses", this.choices.statuses(segment, Given.text(form.performance())));
		model.addAttribute("upheld", this.pages.upheld(segment));
		return VIEW;
	}

}
