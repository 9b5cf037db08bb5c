package rimebook.letters.web;

import java.util.UUID;

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
import rimebook.competition.Competitions;
import rimebook.letters.LetterKind;
import rimebook.letters.Letters;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;

/** To whom letters go, what each of them says, and the sending itself. */
@Controller
@RequestMapping("/desk/letters/{competition}/to/{letterKind}")
class LetterWritingController {

	private static final String RECIPIENTS = "letters/recipients";

	private final Letters letters;

	private final Competitions competitions;

	LetterWritingController(Letters letters, Competitions competitions) {
		this.letters = letters;
		this.competitions = competitions;
	}

	@GetMapping
	String recipients(@PathVariable CompetitionId competition, @PathVariable LetterKind letterKind, Model model) {
		model.addAttribute("form", RecipientsForm.of(this.letters.recipients(competition, letterKind)));
		return recipientsPage(competition, letterKind, model);
	}

	/** Every letter with its values, before anything goes. */
	@PostMapping
	String preview(@PathVariable CompetitionId competition, @PathVariable LetterKind letterKind,
			@ModelAttribute("form") RecipientsForm form, BindingResult errors, Actor actor, Model model) {
		if (Submission.refused(errors, () -> show(this.letters.preview(form.order(competition, letterKind), actor),
				competition, letterKind, model))) {
			return recipientsPage(competition, letterKind, model);
		}
		return "letters/preview";
	}

	/** Whoever is refused sees the letters as they are now. */
	@PostMapping("/send")
	String send(@PathVariable CompetitionId competition, @PathVariable LetterKind letterKind,
			@ModelAttribute("form") RecipientsForm form, BindingResult errors, Actor actor, Model model,
			RedirectAttributes redirect) {
		Sent sent = new Sent();
		if (Submission.refused(errors, () -> sent.id = send(form.order(competition, letterKind), form, actor))) {
			return again(competition, letterKind, form, actor, model);
		}
		Notice.give(redirect, form.isPaper() ? "letters.send.printed" : "letters.send.mailed");
		return "redirect:/desk/letters/" + competition + "/sendings/" + sent.id;
	}

	private UUID send(Letters.Order order, RecipientsForm form, Actor actor) {
		return form.isPaper() ? this.letters.print(order, form.looked(), actor)
				: this.letters.mail(order, form.looked(), actor);
	}

	private String again(CompetitionId competition, LetterKind kind, RecipientsForm form, Actor actor, Model model) {
		try {
			show(this.letters.preview(form.order(competition, kind), actor), competition, kind, model);
			return "letters/preview";
		}
		catch (RuleViolationException ex) {
			return recipientsPage(competition, kind, model);
		}
	}

	private void show(Letters.Preview preview, CompetitionId competition, LetterKind kind, Model model) {
		model.addAttribute("competition", this.competitions.competition(competition));
		model.addAttribute("kind", kind);
		model.addAttribute("preview", preview);
		model.addAttribute("mail", this.letters.canMail());
	}

	private String recipientsPage(CompetitionId competition, LetterKind kind, Model model) {
		model.addAttribute("competition", this.competitions.competition(competition));
		model.addAttribute("kind", kind);
		model.addAttribute("recipients", this.letters.recipients(competition, kind));
		model.addAttribute("mail", this.letters.canMail());
		return RECIPIENTS;
	}

	/** What came of it, for the redirect. */
	private static final class Sent {

		private @Nullable UUID id;

	}

}
