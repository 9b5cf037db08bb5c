package rimebook.entries.web;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

import jakarta.validation.Valid;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.entries.ClubView;
import rimebook.entries.Entries;
import rimebook.entries.SlipCheck;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.wording.Sentence;

/** All events with their numbers of teams, and for each the list of its teams. */
@Controller
@RequestMapping("/desk/entries")
class EntriesController {

	private final Competitions competitions;

	private final Entries entries;

	private final SlipCheck slips;

	EntriesController(Competitions competitions, Entries entries, SlipCheck slips) {
		this.competitions = competitions;
		this.slips = slips;
		this.entries = entries;
	}

	@GetMapping
	String overview(Model model) {
		model.addAttribute("competitions", this.competitions.all().stream().map(this::counted).toList());
		return "entries/overview";
	}

	@GetMapping("/{event}")
	String list(@PathVariable EventId event, @RequestParam(defaultValue = "") String q, Model model) {
		model.addAttribute("entryForm", EntryForm.empty());
		return page(event, q, model);
	}

	@PostMapping("/{event}")
	String enter(@PathVariable EventId event, @Valid EntryForm form, BindingResult result, Actor actor, Model model,
			RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.entries.enter(form.order(event, this.slips), actor))) {
			return page(event, "", model);
		}
		Notice.give(redirect, "entries.entered", form.team());
		return "redirect:/desk/entries/" + event;
	}

	private String page(EventId id, String search, Model model) {
		EventView event = this.competitions.event(id);
		CompetitionView competition = this.competitions.competition(event.competition());
		List<EntryRow> rows = this.entries.ofEvent(id)
			.stream()
			.map((entry) -> EntryRow.of(entry, competition.zone()))
			.toList();
		List<ClubView> clubs = this.entries.clubs();
		Optional<Sentence> refusal = this.entries.refusal(id);
		model.addAttribute("competition", competition);
		model.addAttribute("event", event);
		model.addAttribute("search", search);
		model.addAttribute("entered", rows.stream().filter(EntryRow::isEntered).count());
		model.addAttribute("entries", rows.stream().filter((row) -> row.holds(search)).toList());
		model.addAttribute("all", rows.size());
		model.addAttribute("clubs", clubs.stream().map(ClubView::name).toList());
		model.addAttribute("towns", new TreeSet<>(clubs.stream().map(ClubView::town).toList()));
		model.addAttribute("refusal", refusal.orElse(Sentence.NONE));
		model.addAttribute("oneByOne",
				refusal.isEmpty() ? this.entries.importRefusal(id).orElse(Sentence.NONE) : Sentence.NONE);
		model.addAttribute("late", competition.state() != CompetitionState.ENTRIES_OPEN);
		return "entries/event";
	}

	private CompetitionEntries counted(CompetitionView competition) {
		return new CompetitionEntries(competition,
				this.competitions.events(competition.id())
					.stream()
					.map((event) -> EventEntries.of(event, this.entries.ofEvent(event.id())))
					.toList());
	}

	/** A competition with its events. */
	record CompetitionEntries(CompetitionView competition, List<EventEntries> events) {
	}

}
