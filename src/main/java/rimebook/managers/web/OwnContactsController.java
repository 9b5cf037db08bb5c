package rimebook.managers.web;

import java.util.Locale;
import java.util.UUID;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

import rimebook.accounts.TeamLinks;
import rimebook.managers.OwnRoster;
import rimebook.pages.Given;
import rimebook.pages.Submission;
import rimebook.rosters.ContactView;
import rimebook.shared.Actor;
import rimebook.wording.Sentence;

/** Whom to call about the team: coaches, manager, chaperone, and in an emergency. */
@Controller
@RequestMapping("/manager/contacts")
class OwnContactsController {

	private final OwnRoster roster;

	private final OwnFrame frame;

	OwnContactsController(OwnRoster roster, OwnFrame frame) {
		this.roster = roster;
		this.frame = frame;
	}

	@GetMapping
	String show(TeamLinks.Pass pass, HttpServletRequest request, HttpServletResponse response, Locale language,
			Model model) {
		model.addAttribute("contactForm", new ContactForm(ContactView.Kind.COACH.name(), "", "", ""));
		return page(pass, request, response, language, model);
	}

	@PostMapping
	String add(TeamLinks.Pass pass, @ModelAttribute("contactForm") ContactForm form, BindingResult result, Actor actor,
			HttpServletRequest request, HttpServletResponse response, Locale language, Model model) {
		if (Submission.refused(result, () -> this.roster.addContact(pass, form.kindOf(), Given.text(form.name()),
				Given.text(form.phone()), Given.text(form.mail()), actor))) {
			return page(pass, request, response, language, model);
		}
		return "redirect:/manager/contacts?done=contact-added";
	}

	@PostMapping("/{contact}/removal")
	String remove(TeamLinks.Pass pass, @PathVariable UUID contact, Actor actor) {
		this.roster.removeContact(pass, contact, actor);
		return "redirect:/manager/contacts?done=contact-removed";
	}

	private String page(TeamLinks.Pass pass, HttpServletRequest request, HttpServletResponse response, Locale language,
			Model model) {
		this.frame.fill(pass, "/manager/contacts", request, response, language, model);
		model.addAttribute("contacts", this.roster.contacts(pass));
		model.addAttribute("kinds", ContactView.Kind.values());
		return "managers/contacts";
	}

	/** Somebody to be called, as typed. */
	record ContactForm(@Nullable String kind, @Nullable String name, @Nullable String phone, @Nullable String mail) {

		ContactView.Kind kindOf() {
			return Given.read("kind", this.kind, ContactView.Kind::valueOf, Sentence.of("managers.kind-missing"));
		}

	}

}
