package rimebook.marks.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.SegmentId;
import rimebook.marks.CardReopening;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/** What the referee does at the stand about closed cards and about the panel. */
@Controller
@RequestMapping("/desk/stand/{segment}")
class PanelActionController {

	private final CardReopening reopening;

	private final StandPage page;

	PanelActionController(CardReopening reopening, StandPage page) {
		this.reopening = reopening;
		this.page = page;
	}

	@PostMapping("/reopen")
	String reopen(@PathVariable SegmentId segment, @ModelAttribute(PanelForms.REOPEN) ReopenForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		return answer(segment, Submission.refused(errors,
				() -> this.reopening.reopen(form.performanceGiven(), form.versionSeen(), form.reasonGiven(), actor)),
				"marks.reopen.done", model, redirect);
	}

	private String answer(SegmentId segment, boolean refused, String done, Model model, RedirectAttributes redirect) {
		if (refused) {
			return this.page.show(segment, null, model);
		}
		Notice.give(redirect, done);
		return "redirect:/desk/stand/" + segment;
	}

}
