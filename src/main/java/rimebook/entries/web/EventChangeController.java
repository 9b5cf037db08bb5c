package rimebook.entries.web;

import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.EventChange;
import rimebook.pages.Choice;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** A team that is to skate in another event of the competition. */
@Controller
@RequestMapping("/desk/entries/entry/{entry}/event")
class EventChangeController {

	private final Entries entries;

	private final EventChange changes;

	private final Competitions competitions;

	EventChangeController(Entries entries, EventChange changes, Competitions competitions) {
		this.entries = entries;
		this.changes = changes;
		this.competitions = competitions;
	}

	@GetMapping
	String ask(@PathVariable EntryId entry, Model model) {
		EntryView view = this.entries.entry(entry);
		model.addAttribute("moveForm", new MoveForm("", "", view.version()));
		return page(view, model);
	}

	@PostMapping
	String move(@PathVariable EntryId entry, MoveForm moveForm, BindingResult result, Actor actor, Model model,
			RedirectAttributes redirect) {
		EntryView view = this.entries.entry(entry);
		if (Submission.refused(result, () -> this.changes.move(moveForm.order(entry), actor))) {
			return page(view, model);
		}
		Notice.give(redirect, "entries.moved", view.team().name());
		return "redirect:/desk/entries/" + moveForm.event();
	}

	private String page(EntryView view, Model model) {
		EventView event = this.competitions.event(view.event());
		CompetitionView competition = this.competitions.competition(event.competition());
		List<EventView> others = this.competitions.events(event.competition())
			.stream()
			.filter((other) -> !other.id().equals(event.id()) && !other.isCancelled())
			.toList();
		model.addAttribute("entry", view);
		model.addAttribute("event", event);
		model.addAttribute("open", view.isEntered() && competition.state().isOpenToChange());
		Sentence staying = this.changes.staying(view.id()).orElse(Sentence.NONE);
		model.addAttribute("late", competition.state() != CompetitionState.ENTRIES_OPEN || !staying.isEmpty());
		model.addAttribute("staying", staying);
		model.addAttribute("events", others.stream().map((other) -> Choice.of(other.id(), other.name())).toList());
		return "entries/move";
	}

	/** Where the team is to skate, and why so late. */
	record MoveForm(@Nullable String event, @Nullable String lateReason, @Nullable Integer version) {

		EventChange.Move order(EntryId entry) {
			return new EventChange.Move(entry, (this.version != null) ? this.version : -1, chosen(),
					(this.lateReason != null) ? this.lateReason : "");
		}

		private EventId chosen() {
			try {
				return new EventId(UUID.fromString((this.event != null) ? this.event : ""));
			}
			catch (IllegalArgumentException ex) {
				throw RuleViolationException.ofField("field-missing", "event", Sentence.of("shared.field.missing"));
			}
		}

	}

}
