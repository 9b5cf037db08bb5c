package rimebook.rosters.web;

import java.util.List;
import java.util.stream.Stream;

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
import rimebook.pages.Choice;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.RosterView;
import rimebook.rosters.Rosters;
import rimebook.shared.Actor;

/** What somebody does on a roster: skate, stand by, step in for somebody, leave. */
@Controller
@RequestMapping("/desk/rosters/place/{place}")
class PlaceController {

	private final Rosters rosters;

	private final Entries entries;

	PlaceController(Rosters rosters, Entries entries) {
		this.rosters = rosters;
		this.entries = entries;
	}

	@GetMapping
	String show(@PathVariable RosterView.PlaceId place, Model model) {
		model.addAttribute("placeForm", PlaceForm.of(this.rosters.place(place)));
		return page(place, model);
	}

	@PostMapping
	String change(@PathVariable RosterView.PlaceId place, @ModelAttribute("placeForm") PlaceForm form,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> change(place, form, actor))) {
			return page(place, model);
		}
		Notice.give(redirect, "rosters.place.changed");
		return "redirect:/desk/rosters/entry/" + this.rosters.entryOf(place);
	}

	private void change(RosterView.PlaceId place, PlaceForm form, Actor actor) {
		if (form.stepsIn()) {
			this.rosters.stepIn(place, form.seen(), form.leaving(), form.leavingVersion(), form.reason(), actor);
		}
		else {
			this.rosters.change(place, form.seen(), form.part(), form.reason(), actor);
		}
	}

	private String page(RosterView.PlaceId id, Model model) {
		EntryId entry = this.rosters.entryOf(id);
		RosterView.Place place = this.rosters.place(id);
		model.addAttribute("place", place);
		model.addAttribute("entry", this.entries.entry(entry));
		model.addAttribute("roles", PlaceRole.values());
		model.addAttribute("skating",
				(place.role() != PlaceRole.ALTERNATE) ? List.of()
						: Stream
							.concat(Stream.of(new Choice("", "–")),
									this.rosters.of(entry)
										.onIce()
										.stream()
										.map((one) -> new Choice(one.id() + " " + one.version(), one.skater().name())))
							.toList());
		return "rosters/place";
	}

}
