package rimebook.stand.web;

import java.time.Instant;
import java.util.UUID;

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
import rimebook.panels.SeatGuesses;
import rimebook.panels.SeatId;
import rimebook.panels.SeatTakeoverQuestions;
import rimebook.performances.AbsentJudges;
import rimebook.performances.CardReopening;
import rimebook.performances.PanelChanges;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;

/** What the referee does at the stand about closed cards and about the panel. */
@Controller
@RequestMapping("/desk/stand/{segment}")
class PanelActionController {

	private final CardReopening reopening;

	private final PanelChanges changes;

	private final AbsentJudges absent;

	private final SeatGuesses guesses;

	private final SeatTakeoverQuestions questions;

	private final StandPage page;

	PanelActionController(CardReopening reopening, PanelChanges changes, AbsentJudges absent, SeatGuesses guesses,
			SeatTakeoverQuestions questions, StandPage page) {
		this.reopening = reopening;
		this.changes = changes;
		this.absent = absent;
		this.guesses = guesses;
		this.questions = questions;
		this.page = page;
	}

	@PostMapping("/reopen")
	String reopen(@PathVariable SegmentId segment, @ModelAttribute(StandForms.REOPEN) StandForms.ReopenForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		return answer(segment, Submission.refused(errors,
				() -> this.reopening.reopen(form.performanceGiven(), form.versionSeen(), form.reasonGiven(), actor)),
				"stand.reopen.done", model, redirect);
	}

	@PostMapping("/take-over")
	String takeOver(@PathVariable SegmentId segment, @ModelAttribute(StandForms.TAKEOVER) StandForms.TakeoverForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		return answer(segment,
				Submission.refused(errors,
						() -> this.changes.takeOver(segment, form.judgeGiven(), form.reasonGiven(), actor)),
				"stand.takeover.done", model, redirect);
	}

	@PostMapping("/take-back-seat")
	String takeBack(@PathVariable SegmentId segment, @ModelAttribute(StandForms.TAKE_BACK) StandForms.TakeBackForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		return answer(segment, Submission.refused(errors,
				() -> this.changes.takeBack(segment, form.seatGiven(), form.ruleGiven(), form.reasonGiven(), actor)),
				"stand.takeback.done", model, redirect);
	}

	@PostMapping("/close-without")
	String closeWithout(@PathVariable SegmentId segment, @ModelAttribute(StandForms.ABSENT) StandForms.AbsentForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		return answer(segment, Submission.refused(errors, () -> this.absent.close(form.given(), actor)),
				"stand.absent.done", model, redirect);
	}

	@PostMapping("/free")
	String free(@PathVariable SegmentId segment, @RequestParam UUID guess, Actor actor, RedirectAttributes redirect) {
		this.guesses.free(guess, actor);
		Notice.give(redirect, "stand.guesses.freed");
		return "redirect:/desk/stand/" + segment;
	}

	/** A tablet that asks for a seat gets it, or does not. */
	@PostMapping("/seat-question")
	String answer(@PathVariable SegmentId segment, @RequestParam SeatId seat, @RequestParam long asked,
			@RequestParam boolean yes, Actor actor, RedirectAttributes redirect) {
		try {
			this.questions.answer(seat, Instant.ofEpochMilli(asked), yes, actor);
			Notice.give(redirect, yes ? "stand.question.given" : "stand.question.kept");
		}
		catch (ConflictException ex) {
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
