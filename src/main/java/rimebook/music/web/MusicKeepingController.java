package rimebook.music.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.music.MusicDeadlines;
import rimebook.music.MusicRetention;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/** Until when a competition takes music, and that it keeps it no longer. */
@Controller
class MusicKeepingController {

	private static final String DEADLINE = "music/deadline";

	private final Competitions competitions;

	private final MusicDeadlines deadlines;

	private final MusicRetention retention;

	MusicKeepingController(Competitions competitions, MusicDeadlines deadlines, MusicRetention retention) {
		this.competitions = competitions;
		this.deadlines = deadlines;
		this.retention = retention;
	}

	@ModelAttribute("competition")
	CompetitionView competition(@PathVariable CompetitionId competition) {
		return this.competitions.competition(competition);
	}

	@GetMapping("/desk/music/deadline/{competition}")
	String deadlineForm(@ModelAttribute("competition") CompetitionView competition, Model model) {
		model.addAttribute("form", DeadlineForm.of(this.deadlines.of(competition.id()), competition.zone()));
		return DEADLINE;
	}

	@PostMapping("/desk/music/deadline/{competition}")
	String deadline(@ModelAttribute("competition") CompetitionView competition,
			@ModelAttribute("form") DeadlineForm form, BindingResult errors, Actor actor, RedirectAttributes redirect) {
		if (Submission.refused(errors,
				() -> this.deadlines.set(competition.id(), form.getSeen(), form.closesAt(competition.zone()), actor))) {
			return DEADLINE;
		}
		Notice.give(redirect, "music.deadline.set");
		return "redirect:/desk/music";
	}

	@GetMapping("/desk/music/deletion/{competition}")
	String deletion(@ModelAttribute("competition") CompetitionView competition, Model model) {
		model.addAttribute("there", this.retention.there(competition.id()));
		return "music/deletion";
	}

	@PostMapping("/desk/music/deletion/{competition}")
	String delete(@ModelAttribute("competition") CompetitionView competition, Actor actor,
			RedirectAttributes redirect) {
		MusicRetention.Deleted deleted = this.retention.delete(competition.id(), actor);
		Notice.give(redirect, "music.deletion.done", String.valueOf(deleted.files()),
				String.valueOf(deleted.megabytes()));
		return "redirect:/desk/music";
	}

}
