package rimebook.panels.web;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.EventId;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.panels.OfficialView;
import rimebook.panels.PanelSeating;
import rimebook.panels.Panels;
import rimebook.panels.SeatGuesses;
import rimebook.panels.SeatId;
import rimebook.panels.SeatTakeoverQuestions;
import rimebook.panels.SeatView;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;

/** The page of one event's panel, and what is done from it. */
@Controller
@RequestMapping("/desk/panel")
class PanelController {

	private final Panels panels;

	private final SeatGuesses guesses;

	private final PanelPage page;

	private final PanelSeating whole;

	private final PanelCopy copy;

	private final SeatTakeoverQuestions questions;

	PanelController(Panels panels, SeatGuesses guesses, SeatTakeoverQuestions questions, PanelPage page,
			PanelSeating whole, PanelCopy copy) {
		this.whole = whole;
		this.copy = copy;
		this.guesses = guesses;
		this.questions = questions;
		this.panels = panels;
		this.page = page;
	}

	/** The page; with the panel of another event filled in where that was asked for. */
	@GetMapping("/{event}")
	String show(@PathVariable EventId event, @RequestParam(required = false) @Nullable EventId from, Model model) {
		PanelForm form = (from != null) ? this.copy.of(from, event) : PanelForm.empty();
		model.addAttribute("copied", (from != null) ? this.copy.inWords(from, form) : null);
		return this.page.show(event, form, new BeanPropertyBindingResult(form, "form"), model);
	}

	@PostMapping("/{event}/seats")
	String seat(@PathVariable EventId event, @ModelAttribute("form") PanelForm form, BindingResult errors, Model model,
			Actor actor, RedirectAttributes redirect) {
		AtomicReference<PanelSeating.Outcome> done = new AtomicReference<>();
		Submission.refused(errors, () -> done.set(this.whole.seat(event, form.orders(event), actor)));
		PanelSeating.Outcome panel = done.get();
		if (panel != null) {
			panel.refused()
				.forEach((place, why) -> Submission.reject(errors, PanelForm.field(PanelForm.value(place)), why));
		}
		if (panel == null || errors.hasErrors()) {
			return this.page.show(event, form, errors, model);
		}
		tell(panel.seated(), redirect);
		return back(event);
	}

	private static void tell(List<SeatView> seated, RedirectAttributes redirect) {
		if (seated.size() == 1) {
			OfficialView official = seated.get(0).official();
			Notice.give(redirect, "panels.panel.seated", seated.get(0).label(),
					(official != null) ? official.name() : "");
		}
		else {
			Notice.give(redirect, (seated.size() == 1) ? "panels.panel.seated-one" : "panels.panel.seated-all",
					String.valueOf(seated.size()));
		}
	}

	@PostMapping("/{event}/codes")
	String issueCodes(@PathVariable EventId event, Actor actor, RedirectAttributes redirect) {
		this.panels.issueCodes(event, actor);
		Notice.give(redirect, "panels.panel.codes-issued");
		return back(event);
	}

	@PostMapping("/{event}/free")
	String free(@PathVariable EventId event, @RequestParam UUID guess, Actor actor, RedirectAttributes redirect) {
		this.guesses.free(guess, actor);
		Notice.give(redirect, "panels.guesses.freed");
		return back(event);
	}

	/** A tablet that asks for a seat gets it, or does not. */
	@PostMapping("/{event}/takeover")
	String answer(@PathVariable EventId event, @RequestParam SeatId seat, @RequestParam long asked,
			@RequestParam boolean yes, Actor actor, RedirectAttributes redirect) {
		try {
			this.questions.answer(seat, Instant.ofEpochMilli(asked), yes, actor);
			Notice.give(redirect, yes ? "panels.question.given" : "panels.question.kept");
		}
		catch (ConflictException ex) {
			redirect.addFlashAttribute("refusal", ex.sentence());
		}
		return back(event);
	}

	@PostMapping("/seat/{seat}/vacate")
	String vacate(@PathVariable SeatId seat, @RequestParam int version, Actor actor, RedirectAttributes redirect) {
		SeatView left = this.panels.vacate(seat, version, actor);
		Notice.give(redirect, left.hasCode() ? "panels.panel.vacated-code" : "panels.panel.vacated", left.label());
		return back(left.event());
	}

	@PostMapping("/seat/{seat}/bond")
	String setAside(@PathVariable SeatId seat, @RequestParam int version, @RequestParam String reason, Actor actor,
			RedirectAttributes redirect) {
		SeatView kept = this.panels.setAside(seat, version, reason, actor);
		Notice.give(redirect, "panels.bound.done", kept.label());
		return back(kept.event());
	}

	@PostMapping("/seat/{seat}/code")
	String issueCode(@PathVariable SeatId seat, Actor actor, RedirectAttributes redirect) {
		SeatView renewed = this.panels.issueCode(seat, actor);
		Notice.give(redirect, "panels.panel.code-issued", renewed.label());
		return back(renewed.event());
	}

	private static String back(EventId event) {
		return "redirect:/desk/panel/" + event;
	}

}
