package rimebook.entries.web;

import jakarta.validation.Valid;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.entries.ClubContacts;
import rimebook.entries.ClubView;
import rimebook.entries.OneClub;
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

	private final ClubContacts contacts;

	private final OneClub one;

	RenamingController(Renaming renaming, ClubContacts contacts, OneClub one) {
		this.renaming = renaming;
		this.contacts = contacts;
		this.one = one;
	}

	@GetMapping("/club/{club}")
	String club(@PathVariable ClubView.Id club, Model model) {
		Renaming.KnownClub known = this.renaming.club(club);
		model.addAttribute("form", ClubForm.of(known));
		return clubPage(known, model);
	}

	@PostMapping("/club/{club}")
	String change(@PathVariable ClubView.Id club, @Valid @ModelAttribute("form") ClubForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		boolean refused = Submission.refused(errors, () -> this.renaming.change(form.order(club), actor));
		return refused ? clubPage(this.renaming.club(club), model) : changed("club", club, form.name(), redirect);
	}

	@PostMapping("/club/{club}/contact")
	String contact(@PathVariable ClubView.Id club, @ModelAttribute("contactForm") ContactForm contactForm,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		Renaming.KnownClub known = this.renaming.club(club);
		if (Submission.refused(errors, () -> this.contacts.set(club, contactForm.reach(), actor))) {
			model.addAttribute("form", ClubForm.of(known));
			return clubPage(known, model);
		}
		return changed("club", club, known.club().name(), redirect);
	}

	/** All clubs, with those that turned out to be another one. */
	@GetMapping("/clubs")
	String clubs(Model model) {
		model.addAttribute("clubs", this.renaming.clubs());
		return "entries/clubs";
	}

	private String clubPage(Renaming.KnownClub known, Model model) {
		if (!model.containsAttribute("contactForm")) {
			model.addAttribute("contactForm", ContactForm.of(this.contacts.of(known.club().id())));
		}
		model.addAttribute("also", this.one.alsoWrittenDown(known.club().id()));
		return page("club", known, model);
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

	/** How a club is reached, as typed. */
	record ContactForm(@Nullable String mail, @Nullable String phone, @Nullable Integer seen) {

		static ContactForm of(ClubContacts.Reach known) {
			return new ContactForm(known.mail(), known.phone(), known.version());
		}

		ClubContacts.Reach reach() {
			return new ClubContacts.Reach((this.mail != null) ? this.mail : "", (this.phone != null) ? this.phone : "",
					(this.seen != null) ? this.seen : ClubContacts.Reach.NONE);
		}

	}

}
