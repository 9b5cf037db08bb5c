package rimebook.rosters.web;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.rosters.ContactView;
import rimebook.rosters.Contacts;
import rimebook.rosters.PeopleSearch;
import rimebook.shared.Actor;

/**
 * Finds people by their names, and shows who can be called about teams as the people they
 * are: on which lists they stand, as a file, and the way off these lists. A name that is
 * looked for is sent in the form's body, so that it gets into no log of addresses.
 */
@Controller
@RequestMapping("/desk/rosters")
class PeopleSearchController {

	private final PeopleSearch search;

	private final Contacts contacts;

	private final RosterPages pages;

	PeopleSearchController(PeopleSearch search, Contacts contacts, RosterPages pages) {
		this.search = search;
		this.contacts = contacts;
		this.pages = pages;
	}

	@GetMapping("/people")
	String ask(Model model) {
		model.addAttribute("nameForm", new NameForm(""));
		return "rosters/people";
	}

	@PostMapping("/people")
	String find(@ModelAttribute("nameForm") NameForm form, Model model) {
		model.addAttribute("found", this.search.find((form.name() != null) ? form.name() : ""));
		model.addAttribute("clubNames", this.pages.clubNames());
		return "rosters/people";
	}

	@GetMapping("/contact/{contact}")
	String show(@PathVariable UUID contact, Model model) {
		model.addAttribute("removalForm", new RemovalForm(
				this.contacts.called(contact).stream().map((one) -> one.id().toString()).collect(Collectors.toSet()),
				""));
		return page(contact, model);
	}

	/** Everything that is known, to be handed to whom it is about. */
	@GetMapping("/contact/{contact}/known.json")
	ResponseEntity<KnownFile.KnownLists> known(@PathVariable UUID contact) {
		return ResponseEntity.ok()
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.attachment().filename("known-of-" + contact + ".json").build().toString())
			.header(HttpHeaders.CACHE_CONTROL, "no-store")
			.body(new KnownFile.KnownLists(
					this.pages.lists(this.contacts.called(contact)).stream().map(KnownFile.KnownContact::of).toList()));
	}

	@PostMapping("/contact/{contact}/deletion")
	String remove(@PathVariable UUID contact, @ModelAttribute("removalForm") RemovalForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.contacts.remove(contact, form.chosen(), form.reason(), actor))) {
			return page(contact, model);
		}
		Notice.give(redirect, "rosters.contact.removed");
		return "redirect:/desk/rosters/people";
	}

	private String page(UUID contact, Model model) {
		List<ContactView> same = this.contacts.called(contact);
		model.addAttribute("contact", contact);
		model.addAttribute("name", same.get(0).name());
		model.addAttribute("lists", this.pages.lists(same));
		return "rosters/contact";
	}

	/** What is looked for, as typed. */
	record NameForm(@Nullable String name) {
	}

	/** Off which lists somebody is taken, and why. */
	record RemovalForm(@Nullable Set<String> contacts, @Nullable String reason) {

		Set<UUID> chosen() {
			return ((this.contacts != null) ? this.contacts : Set.<String>of()).stream()
				.filter((id) -> id.matches("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}"))
				.map(UUID::fromString)
				.collect(Collectors.toSet());
		}

		public boolean has(UUID contact) {
			return this.contacts != null && this.contacts.contains(contact.toString());
		}

	}

}
