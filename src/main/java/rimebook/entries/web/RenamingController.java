package rimebook.entries.web;

import jakarta.validation.Valid;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.entries.ClubId;
import rimebook.entries.Renaming;
import rimebook.entries.TeamId;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/** The pages that mend a club and a team. */
@Controller
@RequestMapping("/desk/entries")
class RenamingController {

	private final Renaming renaming;

	RenamingController(Renaming renaming) {
		this.renaming = renaming;
	}

	@GetMapping("/club/{club}")
	String club(@PathVariable ClubId club, Model model) {
		model.addAttribute("form", ClubForm.of(this.renaming.club(club)));
		return clubPage(club, model);
	}

	@PostMapping("/club/{club}")
	String change(@PathVariable ClubId club, @Valid @ModelAttribute("form") ClubForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.renaming.change(form.order(club), actor))) {
			return clubPage(club, model);
		}
		Notice.give(redirect, "entries.club.changed", form.name());
		return "redirect:/desk/entries/club/" + club;
	}

	@GetMapping("/team/{team}")
	String team(@PathVariable TeamId team, Model model) {
		model.addAttribute("form", TeamForm.of(this.renaming.team(team)));
		return teamPage(team, model);
	}

	@PostMapping("/team/{team}")
	String change(@PathVariable TeamId team, @Valid @ModelAttribute("form") TeamForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.renaming.change(form.order(team), actor))) {
			return teamPage(team, model);
		}
		Notice.give(redirect, "entries.team.changed", form.name());
		return "redirect:/desk/entries/team/" + team;
	}

	private String clubPage(ClubId club, Model model) {
		model.addAttribute("known", this.renaming.club(club));
		return "entries/club";
	}

	private String teamPage(TeamId team, Model model) {
		model.addAttribute("known", this.renaming.team(team));
		return "entries/team";
	}

}
