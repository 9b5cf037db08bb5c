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

import rimebook.entries.ClubView;
import rimebook.entries.Renaming;
import rimebook.entries.TeamView;
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
	String club(@PathVariable ClubView.Id club, Model model) {
		Renaming.KnownClub known = this.renaming.club(club);
		model.addAttribute("form", ClubForm.of(known));
		return page("club", known, model);
	}

	@PostMapping("/club/{club}")
	String change(@PathVariable ClubView.Id club, @Valid @ModelAttribute("form") ClubForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		boolean refused = Submission.refused(errors, () -> this.renaming.change(form.order(club), actor));
		return refused ? page("club", this.renaming.club(club), model) : changed("club", club, form.name(), redirect);
	}

	@GetMapping("/team/{team}")
	String team(@PathVariable TeamView.Id team, Model model) {
		Renaming.KnownTeam known = this.renaming.team(team);
		model.addAttribute("form", TeamForm.of(known));
		return page("team", known, model);
	}

	@PostMapping("/team/{team}")
	String change(@PathVariable TeamView.Id team, @Valid @ModelAttribute("form") TeamForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		boolean refused = Submission.refused(errors, () -> this.renaming.change(form.order(team), actor));
		return refused ? page("team", this.renaming.team(team), model) : changed("team", team, form.name(), redirect);
	}

	private static String page(String kind, Record known, Model model) {
		model.addAttribute("known", known);
		return "entries/" + kind;
	}

	private static String changed(String kind, Record id, String name, RedirectAttributes redirect) {
		Notice.give(redirect, "entries." + kind + ".changed", name);
		return "redirect:/desk/entries/" + kind + "/" + id;
	}

}
