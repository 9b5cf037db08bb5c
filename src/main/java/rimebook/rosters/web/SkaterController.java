package rimebook.rosters.web;

import java.util.List;

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

import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.rosters.Contacts;
import rimebook.rosters.RosterView;
import rimebook.rosters.Rosters;
import rimebook.rosters.SamePerson;
import rimebook.rosters.SkaterView;
import rimebook.rosters.Skaters;
import rimebook.shared.Actor;

/**
 * Everything that is known of a person who skates, to be read, mended, agreed to and
 * deleted.
 */
@Controller
@RequestMapping("/desk/rosters/skater/{skater}")
class SkaterController {

	private final Skaters skaters;

	private final Rosters rosters;

	private final Entries entries;

	private final RosterPages pages;

	private final KnownFile file;

	private final SamePerson same;

	private final Contacts contacts;

	SkaterController(Skaters skaters, Rosters rosters, Entries entries, RosterPages pages, KnownFile file,
			SamePerson same, Contacts contacts) {
		this.skaters = skaters;
		this.rosters = rosters;
		this.entries = entries;
		this.pages = pages;
		this.file = file;
		this.same = same;
		this.contacts = contacts;
	}

	@GetMapping
	String show(@PathVariable SkaterView.Id skater, Model model) {
		return page(skater, model);
	}

	/** Everything that is known, to be handed to whom it is about. */
	@GetMapping("/known.json")
	ResponseEntity<KnownFile.Known> known(@PathVariable SkaterView.Id skater) {
		return ResponseEntity.ok()
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.attachment().filename("known-of-" + skater + ".json").build().toString())
			.header(HttpHeaders.CACHE_CONTROL, "no-store")
			.body(this.file.of(skater));
	}

	@PostMapping
	String change(@PathVariable SkaterView.Id skater, @ModelAttribute("skaterForm") SkaterForm form,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.skaters.change(skater, form.seen(), form.draft(), actor))) {
			return page(skater, model);
		}
		return back(skater, "rosters.skater.kept", redirect);
	}

	@PostMapping("/consent")
	String agree(@PathVariable SkaterView.Id skater, @ModelAttribute("consentForm") ConsentForm form,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> form.keep(skater, this.skaters, actor))) {
			return page(skater, model);
		}
		return back(skater, "rosters.skater.kept", redirect);
	}

	@PostMapping("/deletion")
	String erase(@PathVariable SkaterView.Id skater, @ModelAttribute("deletionForm") WaiverController.BackForm form,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result,
				() -> this.skaters.erase(skater, form.seen(), (form.reason() != null) ? form.reason() : "", actor))) {
			return page(skater, model);
		}
		return back(skater, "rosters.skater.deleted", redirect);
	}

	private static String back(SkaterView.Id skater, String notice, RedirectAttributes redirect) {
		Notice.give(redirect, notice);
		return "redirect:/desk/rosters/skater/" + skater;
	}

	private String page(SkaterView.Id id, Model model) {
		SkaterView skater = this.skaters.skater(id);
		model.addAttribute("skater", skater);
		model.addAttribute("clubs", this.pages.clubs());
		SkaterView.Id other = skater.mergedInto();
		model.addAttribute("other", (other != null) ? this.skaters.skater(other) : null);
		model.addAttribute("also", this.same.alsoWrittenDown(id));
		model.addAttribute("called", skater.isErased() ? List.of() : this.contacts.called(skater.name()));
		model.addAttribute("on",
				this.rosters.of(id).entrySet().stream().map((place) -> on(place.getKey(), place.getValue())).toList());
		addIfMissing(model, "skaterForm", SkaterForm.of(skater));
		addIfMissing(model, "consentForm", ConsentForm.of(skater));
		addIfMissing(model, "deletionForm", new WaiverController.BackForm("", skater.version()));
		return "rosters/skater";
	}

	private On on(RosterView.Place place, EntryId id) {
		EntryView entry = this.entries.entry(id);
		return new On(place, entry, this.pages.where(entry));
	}

	private static void addIfMissing(Model model, String name, Object form) {
		if (!model.containsAttribute(name)) {
			model.addAttribute(name, form);
		}
	}

	/** A place on a roster, and where that is. */
	record On(RosterView.Place place, EntryView entry, String where) {
	}

	/** Whether the name may be printed, as typed. */
	record ConsentForm(@Nullable Boolean agreed, @Nullable String guardian, @Nullable String on,
			@Nullable Integer version) {

		ConsentForm {
			agreed = Boolean.TRUE.equals(agreed);
		}

		static ConsentForm of(SkaterView skater) {
			SkaterView.Consent consent = skater.consent();
			return new ConsentForm(consent.isGiven(), consent.guardian(),
					(consent.on() != null) ? consent.on().toString() : "", skater.version());
		}

		void keep(SkaterView.Id skater, Skaters skaters, Actor actor) {
			int seen = (this.version != null) ? this.version : 0;
			if (Boolean.TRUE.equals(this.agreed)) {
				skaters.agree(skater, seen, this.guardian, SkaterForm.day("on", this.on), actor);
			}
			else {
				skaters.disagree(skater, seen, actor);
			}
		}

	}

}
