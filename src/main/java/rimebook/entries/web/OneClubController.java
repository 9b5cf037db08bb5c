package rimebook.entries.web;

import java.util.List;
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

import rimebook.entries.ClubView;
import rimebook.entries.OneClub;
import rimebook.entries.Renaming;
import rimebook.pages.Choice;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/**
 * A club that was written down twice: which other one it is, what follows, the way back.
 */
@Controller
@RequestMapping("/desk/entries/club/{club}")
class OneClubController {

	private final OneClub one;

	private final Renaming clubs;

	OneClubController(OneClub one, Renaming clubs) {
		this.one = one;
		this.clubs = clubs;
	}

	/** Choose the other one first, then look at what follows. */
	@GetMapping("/same")
	String ask(@PathVariable ClubView.Id club, @RequestParam(defaultValue = "") String other, Model model) {
		OneClub.Preview preview = preview(club, other);
		model.addAttribute("sameForm", (preview != null)
				? new SameForm(other, preview.version(), preview.otherVersion(), "") : new SameForm(other, -1, -1, ""));
		return page(club, preview, model);
	}

	@PostMapping("/same")
	String merge(@PathVariable ClubView.Id club, @ModelAttribute("sameForm") SameForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		OneClub.Preview preview = preview(club, form.otherText());
		if (preview == null) {
			return "redirect:/desk/entries/club/" + club + "/same";
		}
		if (Submission.refused(result, () -> this.one.merge(form.order(preview), actor))) {
			return page(club, preview, model);
		}
		Notice.give(redirect, "entries.same.merged", preview.one().name(), preview.other().name());
		return "redirect:/desk/entries/club/" + preview.other().id();
	}

	@PostMapping("/separation")
	String separate(@PathVariable ClubView.Id club, @ModelAttribute("backForm") BackForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.one.separate(club, form.seen(), form.words(), actor))) {
			return page(club, null, model);
		}
		Notice.give(redirect, "entries.same.separated", this.clubs.club(club).club().name());
		return "redirect:/desk/entries/club/" + club;
	}

	private OneClub.@Nullable Preview preview(ClubView.Id club, String other) {
		try {
			ClubView.Id chosen = new ClubView.Id(UUID.fromString(other));
			return chosen.equals(club) ? null : this.one.preview(club, chosen);
		}
		catch (IllegalArgumentException ex) {
			return null;
		}
	}

	/** What turned out to be another one has the way back in place of the choice. */
	private String page(ClubView.Id id, OneClub.@Nullable Preview preview, Model model) {
		Renaming.KnownClub known = this.clubs.club(id);
		List<Choice> others = this.one.candidates(id)
			.stream()
			.map((club) -> Choice.of(club.id(), club.name() + " (" + club.town() + ")"))
			.toList();
		model.addAttribute("known", known);
		model.addAttribute("preview", preview);
		model.addAttribute("others", others);
		if (!model.containsAttribute("sameForm")) {
			model.addAttribute("sameForm", new SameForm("", -1, -1, ""));
		}
		if (!model.containsAttribute("backForm")) {
			model.addAttribute("backForm", new BackForm("", known.version()));
		}
		return "entries/same";
	}

	/** That a club is the other one, with the versions that were looked at. */
	record SameForm(@Nullable String other, @Nullable Integer version, @Nullable Integer otherVersion,
			@Nullable String reason) {

		String otherText() {
			return (this.other != null) ? this.other : "";
		}

		OneClub.Merge order(OneClub.Preview preview) {
			return new OneClub.Merge(preview.one().id(), (this.version != null) ? this.version : -1,
					preview.other().id(), (this.otherVersion != null) ? this.otherVersion : -1,
					(this.reason != null) ? this.reason : "");
		}

	}

	/** Why they are two after all. */
	record BackForm(@Nullable String reason, @Nullable Integer version) {

		int seen() {
			return (this.version != null) ? this.version : -1;
		}

		String words() {
			return (this.reason != null) ? this.reason : "";
		}

	}

}
