package rimebook.letters.web;

import java.util.Locale;

import org.jspecify.annotations.Nullable;
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
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.letters.Draft;
import rimebook.letters.LetterKind;
import rimebook.letters.LetterTexts;
import rimebook.pages.Given;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.wording.Languages;

/** What letters of a kind say in a language, and what they said before. */
@Controller
@RequestMapping("/desk/letters/{competition}/text/{letterKind}")
class LetterTextController {

	private final LetterTexts texts;

	private final Competitions competitions;

	LetterTextController(LetterTexts texts, Competitions competitions) {
		this.texts = texts;
		this.competitions = competitions;
	}

	@GetMapping
	String show(@PathVariable CompetitionId competition, @PathVariable LetterKind letterKind,
			@RequestParam(defaultValue = "en") String language, Model model) {
		LetterTexts.Key key = key(competition, letterKind, language);
		LetterTexts.Version now = this.texts.of(key);
		model.addAttribute("form", new TextForm(now.content().subject(), now.content().body(), now.number(), null));
		return page(key, model);
	}

	@PostMapping
	String change(@PathVariable CompetitionId competition, @PathVariable LetterKind letterKind,
			@RequestParam(defaultValue = "en") String language, @ModelAttribute("form") TextForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		LetterTexts.Key key = key(competition, letterKind, language);
		if (Submission.refused(errors, () -> this.texts.change(key, form.number(), form.typed(), actor))) {
			return page(key, model);
		}
		return leave(key, "letters.text-page.kept", redirect);
	}

	/** Take an earlier version up again. */
	@PostMapping("/again")
	String restore(@PathVariable CompetitionId competition, @PathVariable LetterKind letterKind,
			@RequestParam(defaultValue = "en") String language, @ModelAttribute("form") TextForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		LetterTexts.Key key = key(competition, letterKind, language);
		if (Submission.refused(errors, () -> this.texts.restore(key, form.number(), form.wanted(), actor))) {
			return page(key, model);
		}
		return leave(key, "letters.text-page.again-kept", redirect);
	}

	private static String leave(LetterTexts.Key key, String notice, RedirectAttributes redirect) {
		Notice.give(redirect, notice);
		redirect.addAttribute("language", key.language().getLanguage());
		return "redirect:/desk/letters/" + key.competition() + "/text/" + key.kind();
	}

	private static LetterTexts.Key key(CompetitionId competition, LetterKind kind, String language) {
		return new LetterTexts.Key(competition, kind,
				Languages.SPOKEN.stream()
					.filter((one) -> one.getLanguage().equals(language))
					.findFirst()
					.orElse(Locale.ENGLISH));
	}

	private String page(LetterTexts.Key key, Model model) {
		CompetitionView competition = this.competitions.competition(key.competition());
		model.addAttribute("competition", competition);
		model.addAttribute("zone", competition.zone());
		model.addAttribute("kind", key.kind());
		model.addAttribute("language", key.language());
		model.addAttribute("languages", Languages.SPOKEN);
		model.addAttribute("placeholders", LetterTexts.placeholders());
		model.addAttribute("versions", this.texts.versions(key));
		return "letters/text";
	}

	/**
	 * Words as typed.
	 *
	 * @param seen the number of the version that was looked at
	 * @param again which version is taken up again
	 */
	record TextForm(@Nullable String subject, @Nullable String body, @Nullable Integer seen, @Nullable Integer again) {

		Draft.Content typed() {
			return new Draft.Content(Given.text(this.subject), Given.text(this.body));
		}

		int number() {
			return (this.seen != null) ? this.seen : 0;
		}

		int wanted() {
			return (this.again != null) ? this.again : 0;
		}

	}

}
