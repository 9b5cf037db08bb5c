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
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.performances.PerformanceId;
import rimebook.points.DeductionNotes;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;

/** The deductions that the referee notes at the stand, in points judging. */
@Controller
@RequestMapping("/desk/stand/{segment}/deductions")
class DeductionController {

	private final DeductionNotes deductions;

	private final StandPage page;

	DeductionController(DeductionNotes deductions, StandPage page) {
		this.deductions = deductions;
		this.page = page;
	}

	@PostMapping
	String add(@PathVariable SegmentId segment, @ModelAttribute(IceParts.DEDUCT) DeductForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.deductions.add(form.performanceGiven(), form.sequenceSeen(),
				form.given(), new DeductionNotes.Origin(form.noterGiven(), form.touchGiven()), actor))) {
			return this.page.show(segment, null, model);
		}
		Notice.give(redirect, "stand.deduct.noted");
		return back(segment);
	}

	@PostMapping("/remove")
	String remove(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int sequence,
			@RequestParam int place, Actor actor, RedirectAttributes redirect) {
		try {
			this.deductions.remove(performance, sequence, place, actor);
			Notice.give(redirect, "stand.deduct.removed");
		}
		catch (RuleViolationException | ConflictException ex) {
			redirect.addFlashAttribute("refusal", ex.sentence());
		}
		return back(segment);
	}

	private static String back(SegmentId segment) {
		return "redirect:/desk/stand/" + segment;
	}

}
