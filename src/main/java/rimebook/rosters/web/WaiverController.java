package rimebook.rosters.web;

import java.util.UUID;

import org.jspecify.annotations.Nullable;
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

import rimebook.entries.EntryId;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.rosters.RosterCheck;
import rimebook.rosters.TeamCheck;
import rimebook.rosters.WaiverView;
import rimebook.rosters.Waivers;
import rimebook.shared.Actor;

/** A rule that is not held against a team or somebody in it, and the way back. */
@Controller
@RequestMapping("/desk/rosters")
class WaiverController {

	private final Waivers waivers;

	private final RosterCheck check;

	WaiverController(Waivers waivers, RosterCheck check) {
		this.waivers = waivers;
		this.check = check;
	}

	@GetMapping("/entry/{entry}/waiver")
	String ask(@PathVariable EntryId entry, @RequestParam(defaultValue = "least-on-ice") String rule,
			@RequestParam(defaultValue = "") String place, Model model) {
		WaiverForm form = new WaiverForm(WaiverForm.named(rule).word(), place, "");
		model.addAttribute("waiverForm", form);
		return page(entry, form, model);
	}

	@PostMapping("/entry/{entry}/waiver")
	String waive(@PathVariable EntryId entry, @ModelAttribute("waiverForm") WaiverForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.waivers.waive(form.order(entry), actor))) {
			return page(entry, form, model);
		}
		Notice.give(redirect, "rosters.waiver.given");
		return "redirect:/desk/rosters/entry/" + entry;
	}

	@GetMapping("/waiver/{waiver}")
	String askBack(@PathVariable UUID waiver, Model model) {
		model.addAttribute("backForm", new BackForm("", this.waivers.waiver(waiver).version()));
		return backPage(waiver, model);
	}

	@PostMapping("/waiver/{waiver}")
	String takeBack(@PathVariable UUID waiver, @ModelAttribute("backForm") BackForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.waivers.takeBack(waiver, form.seen(), form.reason(), actor))) {
			return backPage(waiver, model);
		}
		Notice.give(redirect, "rosters.waiver.taken-back");
		return "redirect:/desk/rosters/entry/" + this.waivers.waiver(waiver).entry();
	}

	private String page(EntryId entry, WaiverForm form, Model model) {
		TeamCheck team = this.check.of(entry);
		model.addAttribute("team", team);
		model.addAttribute("rule", WaiverForm.named(form.rule()).spoken());
		model.addAttribute("findings",
				team.open()
					.stream()
					.filter((checked) -> checked.finding().rule() == WaiverForm.named(form.rule()))
					.filter((checked) -> String.valueOf((checked.place() != null) ? checked.place() : "")
						.equals((form.place() != null) ? form.place() : ""))
					.map((checked) -> checked.finding().sentence())
					.toList());
		return "rosters/waiver";
	}

	private String backPage(UUID id, Model model) {
		WaiverView waiver = this.waivers.waiver(id);
		model.addAttribute("waiver", waiver);
		model.addAttribute("team", this.check.of(waiver.entry()));
		return "rosters/waiver-back";
	}

	/** Why something is taken back. */
	record BackForm(@Nullable String reason, @Nullable Integer version) {

		int seen() {
			return (this.version != null) ? this.version : 0;
		}

	}

}
