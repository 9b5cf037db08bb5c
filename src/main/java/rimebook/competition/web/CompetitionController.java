package rimebook.competition.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;

import jakarta.validation.Valid;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.pages.Choice;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;

/** The list of competitions, and a page for each with its facts, state and events. */
@Controller
@RequestMapping("/desk/competitions")
class CompetitionController {

	private final Competitions competitions;

	private final Clock clock;

	CompetitionController(Competitions competitions, Clock clock) {
		this.competitions = competitions;
		this.clock = clock;
	}

	@ModelAttribute("zones")
	List<Choice> zones() {
		return TimeZones.choices();
	}

	@GetMapping
	String list(Model model) {
		model.addAttribute("competitions", this.competitions.all());
		return "competition/list";
	}

	@GetMapping("/new")
	String initCreation(Model model) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZoneId.of(TimeZones.usual()));
		model.addAttribute("competitionForm", CompetitionForm.empty(today));
		return "competition/new";
	}

	@PostMapping("/new")
	String create(@Valid CompetitionForm form, BindingResult result, Actor actor, RedirectAttributes redirect) {
		form.check(result);
		AtomicReference<CompetitionView> created = new AtomicReference<>();
		if (Submission.refused(result, () -> created.set(this.competitions.create(form.draft(), actor)))) {
			return "competition/new";
		}
		Notice.give(redirect, "competition.created", form.name());
		return "redirect:/desk/competitions/" + created.get().id();
	}

	@GetMapping("/{competition}")
	String page(@PathVariable CompetitionId competition, Model model) {
		model.addAttribute("moveForm", new MoveForm(null, null));
		return page(this.competitions.competition(competition), model);
	}

	/** Asks once, saying what follows. */
	@GetMapping("/{competition}/state")
	String ask(@PathVariable CompetitionId competition, @RequestParam CompetitionState next, Model model) {
		CompetitionView view = this.competitions.competition(competition);
		model.addAttribute("competition", view);
		model.addAttribute("move",
				this.competitions.moves(competition)
					.stream()
					.filter((move) -> move.next() == next)
					.findFirst()
					.orElseThrow(() -> NotFoundException.of("move", next)));
		return "competition/move";
	}

	@PostMapping("/{competition}/state")
	String move(@PathVariable CompetitionId competition, MoveForm moveForm, BindingResult result, Actor actor,
			Model model, RedirectAttributes redirect) {
		CompetitionState next = moveForm.state();
		if (next == null) {
			result.reject("competition.state.unknown");
			return page(this.competitions.competition(competition), model);
		}
		if (Submission.refused(result, () -> this.competitions.move(competition, moveForm.version(), next, actor))) {
			return page(this.competitions.competition(competition), model);
		}
		Notice.give(redirect, "competition.moved." + next);
		return "redirect:/desk/competitions/" + competition;
	}

	@GetMapping("/{competition}/edit")
	String initChange(@PathVariable CompetitionId competition, Model model) {
		CompetitionView view = this.competitions.competition(competition);
		model.addAttribute("competition", view);
		model.addAttribute("competitionForm", CompetitionForm.of(view));
		return "competition/edit";
	}

	@PostMapping("/{competition}/edit")
	String change(@PathVariable CompetitionId competition, @Valid CompetitionForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		form.check(result);
		if (Submission.refused(result,
				() -> this.competitions.change(competition, form.version(), form.draft(), actor))) {
			model.addAttribute("competition", this.competitions.competition(competition));
			return "competition/edit";
		}
		Notice.give(redirect, "competition.changed", form.name());
		return "redirect:/desk/competitions/" + competition;
	}

	private String page(CompetitionView competition, Model model) {
		model.addAttribute("competition", competition);
		model.addAttribute("states", CompetitionState.values());
		model.addAttribute("moves", this.competitions.moves(competition.id()));
		model.addAttribute("events", this.competitions.events(competition.id()).stream().map(EventRow::of).toList());
		return "competition/page";
	}

}
