package rimebook.entries.web;

import jakarta.validation.Valid;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.Competitions;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.wording.Sentence;

/** A withdrawal that was a mistake, taken back with its reason. */
@Controller
@RequestMapping("/desk/entries/entry/{entry}/return")
class ReturnController {

	private final Entries entries;

	private final Competitions competitions;

	ReturnController(Entries entries, Competitions competitions) {
		this.entries = entries;
		this.competitions = competitions;
	}

	@GetMapping
	String ask(@PathVariable EntryId entry, Model model) {
		EntryView view = this.entries.entry(entry);
		model.addAttribute("returnForm", new ReturnForm("", view.version()));
		return page(view, model);
	}

	@PostMapping
	String reinstate(@PathVariable EntryId entry, @Valid ReturnForm form, BindingResult result, Actor actor,
			Model model, RedirectAttributes redirect) {
		EntryView view = this.entries.entry(entry);
		if (Submission.refused(result, () -> this.entries.reinstate(entry, form.version(), form.reason(), actor))) {
			return page(view, model);
		}
		Notice.give(redirect, "entries.returned", view.team().name());
		return "redirect:/desk/entries/" + view.event();
	}

	private String page(EntryView view, Model model) {
		model.addAttribute("entry", view);
		model.addAttribute("event", this.competitions.event(view.event()));
		model.addAttribute("refusal",
				view.isEntered() ? Sentence.NONE : this.entries.returnRefusal(view).orElse(Sentence.NONE));
		return "entries/return";
	}

}
