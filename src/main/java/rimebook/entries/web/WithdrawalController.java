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

/** The withdrawal of a team, asked for once more with its reason. */
@Controller
@RequestMapping("/desk/entries/entry/{entry}/withdraw")
class WithdrawalController {

	private final Entries entries;

	private final Competitions competitions;

	WithdrawalController(Entries entries, Competitions competitions) {
		this.entries = entries;
		this.competitions = competitions;
	}

	@GetMapping
	String ask(@PathVariable EntryId entry, Model model) {
		EntryView view = this.entries.entry(entry);
		model.addAttribute("withdrawForm", new WithdrawForm("", view.version()));
		return page(view, model);
	}

	@PostMapping
	String withdraw(@PathVariable EntryId entry, @Valid WithdrawForm form, BindingResult result, Actor actor,
			Model model, RedirectAttributes redirect) {
		EntryView view = this.entries.entry(entry);
		if (Submission.refused(result, () -> this.entries.withdraw(entry, form.version(), form.reason(), actor))) {
			return page(view, model);
		}
		Notice.give(redirect, "entries.withdrawn", view.team().name());
		return "redirect:/desk/entries/" + view.event();
	}

	private String page(EntryView view, Model model) {
		model.addAttribute("entry", view);
		model.addAttribute("event", this.competitions.event(view.event()));
		return "entries/withdraw";
	}

}
