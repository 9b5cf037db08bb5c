package rimebook.entries.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.ForTheAnnouncer;
import rimebook.entries.PlannedElements;
import rimebook.entries.RequiredElements;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.wording.Sentence;

/** The page of one entry, and what the team means to skate. */
@Controller
@RequestMapping("/desk/entries/entry/{entry}")
class EntryPageController {

	private final Entries entries;

	private final PlannedElements plans;

	private final Competitions competitions;

	private final RuleSets ruleSets;

	private final ForTheAnnouncer announced;

	private final RequiredElements required;

	EntryPageController(Entries entries, PlannedElements plans, Competitions competitions, RuleSets ruleSets,
			ForTheAnnouncer announced, RequiredElements required) {
		this.required = required;
		this.announced = announced;
		this.entries = entries;
		this.plans = plans;
		this.competitions = competitions;
		this.ruleSets = ruleSets;
	}

	@GetMapping
	String show(@PathVariable EntryId entry, Model model) {
		EntryView view = this.entries.entry(entry);
		EventView event = about(view, model);
		model.addAttribute("plans", event.segments().stream().map((segment) -> row(view, event, segment)).toList());
		return "entries/entry";
	}

	@GetMapping("/elements/{segment}")
	String elements(@PathVariable EntryId entry, @PathVariable SegmentId segment, Model model) {
		EntryView view = this.entries.entry(entry);
		model.addAttribute("planForm", PlanForm.of(this.plans.of(entry, segment)));
		return page(view, segment, model);
	}

	@PostMapping("/elements/{segment}")
	String plan(@PathVariable EntryId entry, @PathVariable SegmentId segment, PlanForm planForm, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		EntryView view = this.entries.entry(entry);
		if (Submission.refused(result, () -> this.plans.plan(planForm.order(entry, segment), actor))) {
			return page(view, segment, model);
		}
		Notice.give(redirect, "entries.plan.kept", view.team().name());
		return "redirect:/desk/entries/entry/" + entry;
	}

	private String page(EntryView view, SegmentId segment, Model model) {
		EventView event = about(view, model);
		model.addAttribute("plan", row(view, event, event.segment(segment)));
		return "entries/plan";
	}

	private EventView about(EntryView view, Model model) {
		EventView event = this.competitions.event(view.event());
		model.addAttribute("event", event);
		model.addAttribute("entry", EntryRow.of(view, this.competitions.competition(event.competition()).zone()));
		return event;
	}

	private PlanRow row(EntryView view, EventView event, SegmentView segment) {
		PlannedElements.PlanView plan = this.plans.of(view.id(), segment.id());
		return new PlanRow(segment,
				plan.codes()
					.stream()
					.map((code) -> new PlanRow.Element(code, this.ruleSets.nameOf(event, code)))
					.toList(),
				this.plans.refusal(segment.id()).orElse(Sentence.NONE), this.announced.of(view.id(), segment.id()),
				this.required.asked(event, segment.id()), this.required.against(event, plan));
	}

}
