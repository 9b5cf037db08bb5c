package rimebook.timetable.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
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
import rimebook.pages.Choice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.timetable.TimetableLetters;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.plan.TeamChanges;

/** Letters to clubs about a changed timetable, to be printed. */
@Controller
@RequestMapping("/desk/timetable/{competition}/letters")
class LettersController {

	private static final String PAGE = "timetable/letters";

	private final TimetableLetters letters;

	private final TimetableVersions versions;

	private final Competitions competitions;

	LettersController(TimetableLetters letters, TimetableVersions versions, Competitions competitions) {
		this.letters = letters;
		this.versions = versions;
		this.competitions = competitions;
	}

	/**
	 * @param from the version that people know; the one before the newest where none is
	 * named
	 */
	@GetMapping
	String show(@PathVariable CompetitionId competition, @RequestParam(defaultValue = "0") int from, Model model) {
		LettersForm form = LettersForm.of(from, this.versions.published(competition));
		model.addAttribute("form", form);
		return page(competition, form, model);
	}

	@PostMapping
	String print(@PathVariable CompetitionId competition, @ModelAttribute("form") LettersForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors,
				() -> this.letters.note(form.between(competition), form.locales(), form.whose(), actor))) {
			return page(competition, form, model);
		}
		redirect.addAttribute("from", form.between(competition).from());
		redirect.addAttribute("to", form.between(competition).to());
		redirect.addAttribute("languages", String.join(",", form.locales().stream().map(Locale::getLanguage).toList()));
		redirect.addAttribute("club", form.whose());
		return "redirect:/desk/timetable/" + competition + "/letters/sheets.pdf";
	}

	/** The sheets; that they are printed is on the record before. */
	@GetMapping("/sheets.pdf")
	ResponseEntity<byte[]> sheets(@PathVariable CompetitionId competition, @RequestParam(defaultValue = "0") int from,
			@RequestParam(defaultValue = "0") int to, @RequestParam(defaultValue = "en") List<String> languages,
			@RequestParam(defaultValue = "") String club) {
		LettersForm form = LettersForm.of(from, to, this.versions.published(competition), languages, club);
		return ResponseEntity.ok()
			.contentType(MediaType.APPLICATION_PDF)
			.cacheControl(CacheControl.noStore())
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.inline()
						.filename("letters-" + form.from() + "-" + form.to() + ".pdf")
						.build()
						.toString())
			.body(this.letters.print(form.between(competition), form.locales(), form.whose()));
	}

	private String page(CompetitionId competition, LettersForm form, Model model) {
		int newest = this.versions.published(competition);
		List<TeamChanges.OfClub> clubs = (newest > 1) ? this.letters.changes(form.between(competition)) : List.of();
		List<Choice> choices = new ArrayList<>();
		clubs.forEach((club) -> choices.add(new Choice(club.club(), club.club())));
		model.addAttribute("competition", this.competitions.competition(competition));
		model.addAttribute("newest", newest);
		model.addAttribute("earlier", IntStream.range(1, Math.max(1, newest)).boxed().toList());
		model.addAttribute("clubs", clubs);
		model.addAttribute("clubChoices", choices);
		model.addAttribute("languages", LettersForm.LANGUAGES);
		return PAGE;
	}

}
