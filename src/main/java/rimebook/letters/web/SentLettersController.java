package rimebook.letters.web;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
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
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.letters.LetterKind;
import rimebook.letters.LetterView;
import rimebook.letters.Letters;
import rimebook.letters.OutdatedLetters;
import rimebook.letters.SendingView;
import rimebook.letters.SentLetters;
import rimebook.pages.Given;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;

/**
 * Letters of a competition: what can be written, what was sent, and what became of it.
 */
@Controller
@RequestMapping("/desk/letters")
class SentLettersController {

	private final SentLetters sent;

	private final Letters letters;

	private final OutdatedLetters outdated;

	private final Competitions competitions;

	private final Entries entries;

	SentLettersController(SentLetters sent, Letters letters, OutdatedLetters outdated, Competitions competitions,
			Entries entries) {
		this.sent = sent;
		this.letters = letters;
		this.outdated = outdated;
		this.competitions = competitions;
		this.entries = entries;
	}

	@GetMapping
	String list(Model model) {
		model.addAttribute("competitions", this.competitions.all());
		return "letters/list";
	}

	@GetMapping("/{competition}")
	String overview(@PathVariable CompetitionId competition, Model model) {
		about(competition, model);
		model.addAttribute("kinds", LetterKind.values());
		model.addAttribute("sendings", this.sent.of(competition));
		model.addAttribute("outdated", this.outdated.of(competition));
		return "letters/overview";
	}

	@GetMapping("/{competition}/sendings/{sending}")
	String sending(@PathVariable CompetitionId competition, @PathVariable UUID sending, Model model) {
		SendingView view = sending(competition, sending);
		List<LetterView> letters = this.sent.letters(sending);
		about(competition, model);
		model.addAttribute("sending", view);
		model.addAttribute("letters", letters);
		model.addAttribute("teams", teams(competition));
		model.addAttribute("links", this.letters.shown(view, letters));
		model.addAttribute("filled", letters.stream().anyMatch((letter) -> !letter.isEmptied()));
		return "letters/sending";
	}

	/** Take back whatever of it did not go yet. */
	@PostMapping("/{competition}/sendings/{sending}/cancel")
	String cancelAll(@PathVariable CompetitionId competition, @PathVariable UUID sending, Actor actor,
			RedirectAttributes redirect) {
		int cancelled = this.sent.cancelAll(sending(competition, sending).id(), actor);
		Notice.give(redirect, "letters.cancelled-all", String.valueOf(cancelled));
		return "redirect:/desk/letters/" + competition + "/sendings/" + sending;
	}

	/** New links for letters on paper, where theirs are shown no longer. */
	@PostMapping("/{competition}/sendings/{sending}/links")
	String link(@PathVariable CompetitionId competition, @PathVariable UUID sending, Actor actor,
			RedirectAttributes redirect) {
		int made = this.letters.linkAgain(sending(competition, sending).id(), actor);
		Notice.give(redirect, "letters.sending.linked", String.valueOf(made));
		return "redirect:/desk/letters/" + competition + "/sendings/" + sending;
	}

	@GetMapping("/{competition}/sendings/{sending}/sheets.pdf")
	ResponseEntity<byte[]> sheets(@PathVariable CompetitionId competition, @PathVariable UUID sending) {
		return ResponseEntity.ok()
			.contentType(MediaType.APPLICATION_PDF)
			.cacheControl(CacheControl.noStore())
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.inline().filename("sheets-of-letters.pdf").build().toString())
			.body(this.letters.sheets(sending(competition, sending).id()));
	}

	@GetMapping("/{competition}/letter/{letter}")
	String letter(@PathVariable CompetitionId competition, @PathVariable UUID letter, Model model) {
		LetterView view = letter(competition, letter);
		model.addAttribute("form", new AgainForm(view.to().mail()));
		return page(competition, view, model);
	}

	@PostMapping("/{competition}/letter/{letter}/cancel")
	String cancel(@PathVariable CompetitionId competition, @PathVariable UUID letter, Actor actor,
			RedirectAttributes redirect) {
		this.sent.cancel(letter(competition, letter).id(), actor);
		Notice.give(redirect, "letters.cancelled-one");
		return "redirect:/desk/letters/" + competition + "/letter/" + letter;
	}

	@PostMapping("/{competition}/letter/{letter}/again")
	String again(@PathVariable CompetitionId competition, @PathVariable UUID letter,
			@ModelAttribute("form") AgainForm form, BindingResult errors, Actor actor, Model model,
			RedirectAttributes redirect) {
		LetterView view = letter(competition, letter);
		if (Submission.refused(errors, () -> this.sent.again(view.id(), Given.text(form.mail()), actor))) {
			return page(competition, letter(competition, letter), model);
		}
		Notice.give(redirect, "letters.again.done");
		return "redirect:/desk/letters/" + competition + "/letter/" + letter;
	}

	private String page(CompetitionId competition, LetterView letter, Model model) {
		about(competition, model);
		model.addAttribute("letter", letter);
		model.addAttribute("fate", letter.tookLinkAlong() ? this.letters.fate(competition, letter) : null);
		model.addAttribute("sending", this.sent.sending(letter.sending()));
		model.addAttribute("team", this.entries.entry(letter.entry()).team());
		return "letters/letter";
	}

	@GetMapping("/{competition}/deletion")
	String deletion(@PathVariable CompetitionId competition, Model model) {
		about(competition, model);
		model.addAttribute("there", this.sent.there(competition));
		return "letters/deletion";
	}

	@PostMapping("/{competition}/deletion")
	String delete(@PathVariable CompetitionId competition, Actor actor, RedirectAttributes redirect) {
		SentLetters.Emptied emptied = this.sent.empty(competition, actor);
		Notice.give(redirect, "letters.deletion.done", String.valueOf(emptied.letters()),
				String.valueOf(emptied.texts()));
		return "redirect:/desk/letters/" + competition;
	}

	private void about(CompetitionId id, Model model) {
		CompetitionView competition = this.competitions.competition(id);
		model.addAttribute("competition", competition);
		model.addAttribute("zone", competition.zone());
		model.addAttribute("mail", this.letters.canMail());
	}

	private Map<EntryId, String> teams(CompetitionId competition) {
		return this.entries.ofEvents(this.competitions.events(competition).stream().map(EventView::id).toList())
			.stream()
			.collect(Collectors.toMap(EntryView::id, (entry) -> entry.team().name()));
	}

	/** A sending of another competition is not found here. */
	private SendingView sending(CompetitionId competition, UUID id) {
		SendingView sending = this.sent.sending(id);
		if (!sending.competition().equals(competition)) {
			throw NotFoundException.of("letter", id);
		}
		return sending;
	}

	private LetterView letter(CompetitionId competition, UUID id) {
		LetterView letter = this.sent.letter(id);
		sending(competition, letter.sending());
		return letter;
	}

	/**
	 * Where a letter goes when it is sent again.
	 *
	 * @param mail an address of electronic mail
	 */
	record AgainForm(@Nullable String mail) {
	}

}
