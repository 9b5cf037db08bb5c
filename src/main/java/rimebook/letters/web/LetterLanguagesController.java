package rimebook.letters.web;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.entries.TeamView;
import rimebook.letters.LetterKind;
import rimebook.letters.Letters;
import rimebook.letters.TeamLanguages;
import rimebook.pages.Notice;
import rimebook.shared.Actor;
import rimebook.wording.Languages;

/** In which language each team of a competition is written to. */
@Controller
@RequestMapping("/desk/letters/{competition}/languages")
class LetterLanguagesController {

	/** Before the identity of a team in the name of its field. */
	private static final String FIELD = "team-";

	private final TeamLanguages languages;

	private final Letters letters;

	private final Competitions competitions;

	LetterLanguagesController(TeamLanguages languages, Letters letters, Competitions competitions) {
		this.languages = languages;
		this.letters = letters;
		this.competitions = competitions;
	}

	@GetMapping
	String show(@PathVariable CompetitionId competition, Model model) {
		List<Letters.Recipient> teams = this.letters.recipients(competition, LetterKind.FREE);
		Map<TeamView.Id, Letters.Recipient> once = new LinkedHashMap<>();
		teams.forEach((one) -> once.putIfAbsent(one.entry().team().id(), one));
		model.addAttribute("competition", this.competitions.competition(competition));
		model.addAttribute("teams", List.copyOf(once.values()));
		model.addAttribute("languages", Languages.SPOKEN);
		return "letters/languages";
	}

	@PostMapping
	String set(@PathVariable CompetitionId competition, @RequestParam Map<String, String> typed, Actor actor,
			RedirectAttributes redirect) {
		Map<TeamView.Id, Locale> chosen = new HashMap<>();
		typed.forEach((field, language) -> {
			if (field.matches(FIELD + "[0-9a-f-]{36}")) {
				chosen.put(TeamView.Id.of(field.substring(FIELD.length())), Locale.forLanguageTag(language));
			}
		});
		int changed = this.languages.set(competition, chosen, actor);
		Notice.give(redirect, "letters.languages.kept", String.valueOf(changed));
		return "redirect:/desk/letters/" + competition;
	}

}
