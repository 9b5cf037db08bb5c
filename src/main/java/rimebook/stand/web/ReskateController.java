package rimebook.stand.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.SegmentId;
import rimebook.pages.Given;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.performances.PerformanceId;
import rimebook.performances.Reskates;
import rimebook.performances.SegmentRun;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;

/** What the referee does about teams that do not skate in the drawn order, or again. */
@Controller
@RequestMapping("/desk/stand/{segment}")
class ReskateController {

	private final SegmentRun run;

	private final Reskates reskates;

	private final StandPage page;

	ReskateController(SegmentRun run, Reskates reskates, StandPage page) {
		this.run = run;
		this.reskates = reskates;
		this.page = page;
	}

	/** Two referees who call at once are kept apart by the ice: one team is on it. */
	@PostMapping("/call-other")
	String call(@PathVariable SegmentId segment, @ModelAttribute(SkatingAgain.CALL) SkatingAgain.CallForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		return answer(segment, Submission.refused(errors, () -> call(form.calledGiven(), form, actor)),
				"stand.page.called", model, redirect);
	}

	private void call(PerformanceId id, SkatingAgain.CallForm form, Actor actor) {
		this.run.call(id, this.run.performance(id).version(), Given.text(form.callReason()), actor);
	}

	@PostMapping("/let-wait")
	String letWait(@PathVariable SegmentId segment, @ModelAttribute(SkatingAgain.WAIT) SkatingAgain.WaitForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		return answer(segment, Submission.refused(errors, () -> this.reskates.letWait(form.performanceGiven(),
				form.versionSeen(), Given.text(form.waitReason()), actor)), "stand.wait.done", model, redirect);
	}

	@PostMapping("/take-back-reskate")
	String takeBack(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int version,
			Actor actor, RedirectAttributes redirect) {
		try {
			this.reskates.takeBack(performance, version, actor);
			Notice.give(redirect, "stand.reskate.taken-back");
		}
		catch (RuleViolationException | ConflictException ex) {
			redirect.addFlashAttribute("refusal", ex.sentence());
		}
		return "redirect:/desk/stand/" + segment;
	}

	private String answer(SegmentId segment, boolean refused, String done, Model model, RedirectAttributes redirect) {
		if (refused) {
			return this.page.show(segment, null, model);
		}
		Notice.give(redirect, done);
		return "redirect:/desk/stand/" + segment;
	}

}
