package rimebook.rosters.web;

import java.util.UUID;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.entries.EntryId;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.rosters.Contacts;
import rimebook.rosters.Rosters;
import rimebook.shared.Actor;

/** The roster of one entry, and whom to call about its team. */
@Controller
@RequestMapping("/desk/rosters/entry/{entry}")
class RosterController {

	private final Rosters rosters;

	private final Contacts contacts;

	private final RosterPages pages;

	RosterController(Rosters rosters, Contacts contacts, RosterPages pages) {
		this.rosters = rosters;
		this.contacts = contacts;
		this.pages = pages;
	}

	@GetMapping
	String show(@PathVariable EntryId entry, Model model) {
		return this.pages.roster(entry, model);
	}

	@PostMapping
	String add(@PathVariable EntryId entry, @ModelAttribute("skaterForm") SkaterForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result,
				() -> this.rosters.addNew(entry, form.draft(), form.part(), form.isAnother(), form.reason(), actor))) {
			return this.pages.roster(entry, model);
		}
		Notice.give(redirect, "rosters.added");
		return back(entry);
	}

	@PostMapping("/known")
	String addKnown(@PathVariable EntryId entry, @ModelAttribute("knownForm") KnownForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.rosters.add(entry, form.id(), form.part(), form.reason(), actor))) {
			return this.pages.roster(entry, model);
		}
		Notice.give(redirect, "rosters.added");
		return back(entry);
	}

	@PostMapping("/contacts")
	String addContact(@PathVariable EntryId entry, @ModelAttribute("contactForm") ContactForm form,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.contacts.add(form.order(entry), actor))) {
			return this.pages.roster(entry, model);
		}
		Notice.give(redirect, "rosters.contact.added");
		return back(entry);
	}

	@PostMapping("/contacts/{contact}/removal")
	String removeContact(@PathVariable EntryId entry, @PathVariable UUID contact, Actor actor,
			RedirectAttributes redirect) {
		this.contacts.remove(entry, contact, actor);
		Notice.give(redirect, "rosters.contact.removed");
		return back(entry);
	}

	private static String back(EntryId entry) {
		return "redirect:/desk/rosters/entry/" + entry;
	}

}
