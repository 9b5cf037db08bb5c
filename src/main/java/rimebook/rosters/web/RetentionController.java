package rimebook.rosters.web;

import org.jspecify.annotations.Nullable;
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
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.rosters.Retention;
import rimebook.shared.Actor;

/**
 * The day on which what is known of the people of a competition is deleted, and what was.
 */
@Controller
@RequestMapping("/desk/rosters/retention/{competition}")
class RetentionController {

	private final Retention retention;

	private final Competitions competitions;

	RetentionController(Retention retention, Competitions competitions) {
		this.retention = retention;
		this.competitions = competitions;
	}

	@GetMapping
	String show(@PathVariable CompetitionId competition, Model model) {
		model.addAttribute("retentionForm",
				this.retention.of(competition)
					.map((known) -> new RetentionForm(known.deleteOn().toString(), known.version()))
					.orElseGet(() -> new RetentionForm("", Retention.View.NONE)));
		return page(competition, model);
	}

	@PostMapping
	String set(@PathVariable CompetitionId competition, @ModelAttribute("retentionForm") RetentionForm form,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.retention.set(competition,
				SkaterForm.day("deleteOn", form.deleteOn()), form.seen(), actor))) {
			return page(competition, model);
		}
		Notice.give(redirect, "rosters.retention.kept");
		return "redirect:/desk/rosters/retention/" + competition;
	}

	private String page(CompetitionId id, Model model) {
		CompetitionView competition = this.competitions.competition(id);
		model.addAttribute("competition", competition);
		model.addAttribute("zone", competition.zone());
		model.addAttribute("known", this.retention.of(id).orElse(null));
		return "rosters/retention";
	}

	/**
	 * The day as typed.
	 *
	 * @param deleteOn year-month-day
	 */
	record RetentionForm(@Nullable String deleteOn, @Nullable Integer version) {

		int seen() {
			return (this.version != null) ? this.version : Retention.View.NONE;
		}

	}

}
