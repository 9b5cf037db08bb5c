package rimebook.timetable.web;

import java.util.UUID;

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
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.timetable.Timetables;

/** The form of a block: a new one, or one that is there. */
@Controller
@RequestMapping("/desk/timetable/{competition}/blocks")
class BlockController {

	private static final String PAGE = "timetable/block";

	private final Timetables timetables;

	private final TimetablePages pages;

	BlockController(Timetables timetables, TimetablePages pages) {
		this.timetables = timetables;
		this.pages = pages;
	}

	@GetMapping("/new")
	String newBlock(@PathVariable CompetitionId competition, @RequestParam(defaultValue = "") String sheet,
			@RequestParam(defaultValue = "999") int position, Model model) {
		model.addAttribute("form", BlockForm.empty(this.pages.view(competition), sheet, position));
		return page(competition, model, "new");
	}

	@PostMapping("/new")
	String add(@PathVariable CompetitionId competition, @ModelAttribute("form") BlockForm form, BindingResult errors,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors,
				() -> this.timetables.add(competition, form.seen(), form.draft(), form.where(), actor))) {
			this.pages.since(competition, form.seen(), model);
			return page(competition, model, "new");
		}
		Notice.give(redirect, "timetable.plan.added");
		return "redirect:/desk/timetable/" + competition;
	}

	@GetMapping("/{block}")
	String changeForm(@PathVariable CompetitionId competition, @PathVariable UUID block, Model model) {
		model.addAttribute("form",
				BlockForm.of(this.pages.block(competition, block), this.pages.view(competition).number()));
		return page(competition, model, block.toString());
	}

	/** One that somebody removed meanwhile is shown again as a new one. */
	@PostMapping("/{block}")
	String change(@PathVariable CompetitionId competition, @PathVariable UUID block,
			@ModelAttribute("form") BlockForm form, BindingResult errors, Actor actor, Model model,
			RedirectAttributes redirect) {
		if (Submission.refused(errors,
				() -> this.timetables.change(competition, form.seen(), block, form.draft(), actor))) {
			this.pages.since(competition, form.seen(), model);
			return page(competition, model, this.pages.has(competition, block) ? block.toString() : "new");
		}
		Notice.give(redirect, "timetable.plan.changed");
		return "redirect:/desk/timetable/" + competition;
	}

	private String page(CompetitionId competition, Model model, String address) {
		this.pages.block(competition, model);
		model.addAttribute("address", address);
		return PAGE;
	}

}
