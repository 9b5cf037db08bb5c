package rimebook.timetable.web;

import java.util.UUID;

import org.springframework.context.annotation.Bean;
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
import rimebook.competition.Competitions;
import rimebook.pages.DeskEntry;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.timetable.MeasuredMarking;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.Timetables;

/** The page of a competition's plan, and what is done with one press on it. */
@Controller
@RequestMapping("/desk/timetable")
class TimetableController {

	private static final String PAGE = "timetable/plan";

	private final Timetables timetables;

	private final TimetableVersions versions;

	private final Competitions competitions;

	private final MeasuredMarking marking;

	private final TimetablePages pages;

	TimetableController(Timetables timetables, TimetableVersions versions, Competitions competitions,
			MeasuredMarking marking, TimetablePages pages) {
		this.marking = marking;
		this.timetables = timetables;
		this.versions = versions;
		this.competitions = competitions;
		this.pages = pages;
	}

	@GetMapping
	String list(Model model) {
		model.addAttribute("competitions", this.competitions.all());
		return "timetable/list";
	}

	@GetMapping("/{competition}")
	String show(@PathVariable CompetitionId competition, Model model) {
		this.pages.plan(competition, model);
		model.addAttribute("form", new ActForm(this.timetables.plan(competition).number(), ""));
		return PAGE;
	}

	@PostMapping("/{competition}/fill")
	String fill(@PathVariable CompetitionId competition, @ModelAttribute("form") ActForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		return done(competition, form, errors, () -> this.timetables.fill(competition, form.seen(), actor), model,
				redirect, "timetable.plan.filled");
	}

	/** What was measured today becomes a value of the plan. */
	@PostMapping("/{competition}/rules/measured")
	String takeMeasured(@PathVariable CompetitionId competition, @RequestParam boolean points,
			@ModelAttribute("form") ActForm form, BindingResult errors, Actor actor, Model model,
			RedirectAttributes redirect) {
		return done(competition, form, errors, () -> this.marking.take(competition, form.seen(), points, actor), model,
				redirect, "timetable.rules.measured.taken");
	}

	@PostMapping("/{competition}/take-back")
	String takeBack(@PathVariable CompetitionId competition, @ModelAttribute("form") ActForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		return done(competition, form, errors, () -> this.timetables.takeBack(competition, form.seen(), actor), model,
				redirect, "timetable.plan.taken-back");
	}

	@PostMapping("/{competition}/publish")
	String publish(@PathVariable CompetitionId competition, @ModelAttribute("form") ActForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		return done(competition, form, errors,
				() -> this.versions.publish(competition, form.seen(), form.noted(), actor), model, redirect,
				"timetable.plan.published");
	}

	@PostMapping("/{competition}/blocks/{block}/move")
	String move(@PathVariable CompetitionId competition, @PathVariable UUID block, @RequestParam int places,
			@ModelAttribute("form") ActForm form, BindingResult errors, Actor actor, Model model,
			RedirectAttributes redirect) {
		return done(competition, form, errors,
				() -> this.timetables.move(competition, form.seen(), block, Integer.signum(places), actor), model,
				redirect, "timetable.plan.moved");
	}

	@PostMapping("/{competition}/blocks/{block}/remove")
	String remove(@PathVariable CompetitionId competition, @PathVariable UUID block,
			@ModelAttribute("form") ActForm form, BindingResult errors, Actor actor, Model model,
			RedirectAttributes redirect) {
		return done(competition, form, errors, () -> this.timetables.remove(competition, form.seen(), block, actor),
				model, redirect, "timetable.plan.removed");
	}

	@PostMapping("/{competition}/ice/remove")
	String removeIce(@PathVariable CompetitionId competition, @RequestParam String sheet,
			@ModelAttribute("form") ActForm form, BindingResult errors, Actor actor, Model model,
			RedirectAttributes redirect) {
		return done(competition, form, errors,
				() -> this.timetables.remove(competition, form.seen(), SheetKey.place(sheet), actor), model, redirect,
				"timetable.plan.ice-removed");
	}

	private String done(CompetitionId competition, ActForm form, BindingResult errors, Runnable act, Model model,
			RedirectAttributes redirect, String notice) {
		if (Submission.refused(errors, act)) {
			this.pages.plan(competition, model);
			this.pages.since(competition, form.seen(), model);
			return PAGE;
		}
		Notice.give(redirect, notice);
		return "redirect:/desk/timetable/" + competition;
	}

	@Bean
	static DeskEntry timetableDeskEntry() {
		return new DeskEntry(45, "/desk/timetable", "timetable");
	}

}
