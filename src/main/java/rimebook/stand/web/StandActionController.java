package rimebook.stand.web;

import java.util.Locale;

import org.springframework.context.MessageSource;
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
import rimebook.performances.SegmentRun;
import rimebook.remarks.Remarks;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;

/**
 * What the referee does at the stand. What is a button only is answered with the stand
 * and, where it was refused, the reason on top; what was typed is shown again.
 */
@Controller
@RequestMapping("/desk/stand/{segment}")
class StandActionController {

	private final SegmentRun run;

	private final Remarks remarks;

	private final StandPage page;

	private final MessageSource messages;

	StandActionController(SegmentRun run, Remarks remarks, StandPage page, MessageSource messages) {
		this.run = run;
		this.remarks = remarks;
		this.page = page;
		this.messages = messages;
	}

	@PostMapping("/open")
	String open(@PathVariable SegmentId segment, Actor actor, RedirectAttributes redirect) {
		return act(segment, redirect, "stand.page.opened", () -> this.run.open(segment, actor));
	}

	@PostMapping("/call")
	String call(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int version,
			Actor actor, RedirectAttributes redirect) {
		return act(segment, redirect, "stand.page.called", () -> this.run.call(performance, version, actor));
	}

	@PostMapping("/take-back")
	String takeBack(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int version,
			Actor actor, RedirectAttributes redirect) {
		return act(segment, redirect, "stand.page.taken-back", () -> this.run.takeBack(performance, version, actor));
	}

	@PostMapping("/close")
	String close(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int version,
			Actor actor, RedirectAttributes redirect) {
		return act(segment, redirect, "stand.page.closed", () -> this.run.close(performance, version, actor));
	}

	/** A quick remark only fills the form; it is told to the panel when it is sent. */
	@PostMapping(path = "/remarks", params = "quick")
	String fill(@PathVariable SegmentId segment, RemarkForm form, @RequestParam QuickRemark quick, Locale locale,
			Model model) {
		String words = this.messages.getMessage("stand.quick." + quick, null, locale);
		model.addAttribute(StandPage.REMARK, form.filled(quick, words));
		return this.page.show(segment, null, model);
	}

	@PostMapping(path = "/remarks", params = "!quick")
	String note(@PathVariable SegmentId segment, @ModelAttribute(StandPage.REMARK) RemarkForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.remarks.note(form.performanceGiven(), form.kindGiven(),
				Given.text(form.text()), form.touchGiven(), actor))) {
			return this.page.show(segment, null, model);
		}
		Notice.give(redirect, "stand.page.noted");
		return back(segment);
	}

	@PostMapping("/end")
	String end(@PathVariable SegmentId segment, @ModelAttribute(StandPage.END) EndForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.run.end(form.performanceGiven(), form.versionSeen(), form.howGiven(),
				Given.text(form.reason()), actor))) {
			return this.page.show(segment, form.performanceGiven(), model);
		}
		Notice.give(redirect, "stand.page.ended");
		return back(segment);
	}

	private static String act(SegmentId segment, RedirectAttributes redirect, String done, Runnable act) {
		try {
			act.run();
			Notice.give(redirect, done);
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
