package rimebook.rosters.web;

import java.time.LocalDate;
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

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.entries.ClubView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.RosterView;
import rimebook.rosters.Rosters;
import rimebook.rosters.SkaterView;
import rimebook.rosters.Skaters;
import rimebook.rosters.WaiverView;
import rimebook.rosters.Waivers;
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

	private final Competitions competitions;

	private final RosterPages pages;

	private final Waivers waivers;

	SkaterController(Skaters skaters, Rosters rosters, Entries entries, Competitions competitions, RosterPages pages,
			Waivers waivers) {
		this.waivers = waivers;
		this.skaters = skaters;
		this.rosters = rosters;
		this.entries = entries;
		this.competitions = competitions;
		this.pages = pages;
	}

	@GetMapping
	String show(@PathVariable SkaterView.Id skater, Model model) {
		return page(skater, model);
	}

	/** Everything that is known, to be handed to whom it is about. */
	@GetMapping("/known.json")
	ResponseEntity<Known> known(@PathVariable SkaterView.Id skater) {
		SkaterView view = this.skaters.skater(skater);
		String club = this.entries.clubs()
			.stream()
			.filter((one) -> one.id().equals(view.club()))
			.map(ClubView::name)
			.findFirst()
			.orElse("");
		List<KnownPlace> places = this.rosters.of(skater)
			.entrySet()
			.stream()
			.map((place) -> known(place.getKey(), place.getValue()))
			.toList();
		return ResponseEntity.ok()
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.attachment().filename("known-of-" + skater + ".json").build().toString())
			.header(HttpHeaders.CACHE_CONTROL, "no-store")
			.body(new Known(skater.toString(), view.facts().givenName(), view.facts().familyName(),
					view.facts().birthDate(), view.facts().membershipNumber(), club, view.consent(), view.isErased(),
					places));
	}

	private KnownPlace known(RosterView.Place place, EntryId entry) {
		On on = on(place, entry);
		List<WaiverView> waivers = this.waivers.of(entry)
			.stream()
			.filter((waiver) -> place.id().equals(waiver.place()))
			.toList();
		return new KnownPlace(on.entry().team().name(), on.where(), place.number(), place.role(), place.insteadOf(),
				waivers.stream().map((waiver) -> waiver.rule().word() + ": " + waiver.given().reason()).toList());
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
		model.addAttribute("on",
				this.rosters.of(id).entrySet().stream().map((place) -> on(place.getKey(), place.getValue())).toList());
		addIfMissing(model, "skaterForm", SkaterForm.of(skater));
		addIfMissing(model, "consentForm", ConsentForm.of(skater));
		addIfMissing(model, "deletionForm", new WaiverController.BackForm("", skater.version()));
		return "rosters/skater";
	}

	private On on(RosterView.Place place, EntryId id) {
		EntryView entry = this.entries.entry(id);
		EventView event = this.competitions.event(entry.event());
		return new On(place, entry, event.name() + ", " + this.competitions.competition(event.competition()).name());
	}

	private static void addIfMissing(Model model, String name, Object form) {
		if (!model.containsAttribute(name)) {
			model.addAttribute(name, form);
		}
	}

	/** Everything that is known of somebody, as a file. */
	record Known(String identity, String givenName, String familyName, @Nullable LocalDate birthDate,
			String membershipNumber, String club, SkaterView.Consent consent, boolean deleted,
			List<KnownPlace> rosters) {
	}

	/** A place on a roster in that file, with the rules that were waived for them. */
	record KnownPlace(String team, String event, int place, PlaceRole part, @Nullable Integer insteadOfPlace,
			List<String> waived) {
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
