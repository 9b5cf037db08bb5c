package rimebook.competition.web;

import java.util.concurrent.atomic.AtomicReference;

import jakarta.validation.Valid;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethods;
import rimebook.competition.RuleSets;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;

/** The events of a competition, a page for each. */
@Controller
@RequestMapping("/desk/competitions/{competition}/events")
class EventController {

	private static final String VIEW = "view";

	private final Competitions competitions;

	private final EventRoad road;

	private final RuleSets ruleSets;

	private final JudgingMethods methods;

	EventController(Competitions competitions, EventRoad road, RuleSets ruleSets, JudgingMethods methods) {
		this.methods = methods;
		this.competitions = competitions;
		this.road = road;
		this.ruleSets = ruleSets;
	}

	@ModelAttribute("competition")
	CompetitionView competition(@PathVariable CompetitionId competition) {
		return this.competitions.competition(competition);
	}

	@ModelAttribute("choices")
	EventChoices choices() {
		return new EventChoices(this.methods.all(), this.ruleSets);
	}

	/** The event that the address names; {@code null} where a new one is added. */
	@ModelAttribute(VIEW)
	@Nullable EventView view(@PathVariable CompetitionId competition, @PathVariable(required = false) @Nullable EventId event,
			Model model) {
		if (event == null) {
			return null;
		}
		EventView view = found(competition, event);
		model.addAttribute("event", EventRow.of(view));
		return view;
	}

	@GetMapping("/new")
	String initAdding(Model model) {
		model.addAttribute("eventForm", EventForm.empty());
		return "competition/event-new";
	}

	@PostMapping("/new")
	String add(@PathVariable CompetitionId competition, @Valid EventForm form, BindingResult result, Actor actor,
			RedirectAttributes redirect) {
		check(form, result);
		AtomicReference<EventView> added = new AtomicReference<>();
		if (Submission.refused(result, () -> added.set(this.competitions.addEvent(competition, form.draft(), actor)))) {
			return "competition/event-new";
		}
		Notice.give(redirect, "competition.event.added", form.name());
		return redirectTo(added.get());
	}

	@GetMapping("/{event}")
	String page(@ModelAttribute(name = VIEW, binding = false) EventView view, Authentication viewer, Model model) {
		model.addAttribute("ruleSet", view.hasTechnicalPanel() ? this.ruleSets.of(view) : null);
		model.addAttribute("road", this.road.of(view, viewer));
		return "competition/event";
	}

	@GetMapping("/{event}/edit")
	String initChange(@ModelAttribute(name = VIEW, binding = false) EventView view, Model model) {
		model.addAttribute("eventForm", EventForm.of(view));
		return "competition/event-edit";
	}

	@PostMapping("/{event}/edit")
	String change(@ModelAttribute(name = VIEW, binding = false) EventView view, @Valid EventForm form,
			BindingResult result, Actor actor, RedirectAttributes redirect) {
		check(form, result);
		if (Submission.refused(result,
				() -> this.competitions.changeEvent(view.id(), form.version(), form.draft(), actor))) {
			return "competition/event-edit";
		}
		Notice.give(redirect, "competition.event.changed", form.name());
		return redirectTo(view);
	}

	@GetMapping("/{event}/copy")
	String initCopy(Model model) {
		model.addAttribute("copyForm", new CopyForm(""));
		return "competition/event-copy";
	}

	@PostMapping("/{event}/copy")
	String copy(@ModelAttribute(name = VIEW, binding = false) EventView original, @Valid CopyForm form,
			BindingResult result, Actor actor, RedirectAttributes redirect) {
		AtomicReference<EventView> copy = new AtomicReference<>();
		if (Submission.refused(result,
				() -> copy.set(this.competitions.copyEvent(original.id(), form.name(), actor)))) {
			return "competition/event-copy";
		}
		Notice.give(redirect, "competition.event.copied", original.name(), form.name());
		return redirectTo(copy.get());
	}

	/** A choice that is none of those offered leaves nothing to look at. */
	private static void check(EventForm form, BindingResult result) {
		if (result.getTarget() != null) {
			form.check(result);
		}
	}

	private EventView found(CompetitionId competition, EventId id) {
		EventView event = this.competitions.event(id);
		if (!event.competition().equals(competition)) {
			throw NotFoundException.of("event", id);
		}
		return event;
	}

	private static String redirectTo(EventView event) {
		return "redirect:/desk/competitions/" + event.competition() + "/events/" + event.id();
	}

}
