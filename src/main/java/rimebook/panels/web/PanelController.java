package rimebook.panels.web;

import java.util.UUID;

import java.util.concurrent.atomic.AtomicReference;

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

import rimebook.competition.EventId;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.panels.OfficialView;
import rimebook.panels.Panels;
import rimebook.panels.SeatGuesses;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.shared.Actor;

/** The page of one event's panel, and what is done from it. */
@Controller
@RequestMapping("/desk/panel")
class PanelController {

	private final Panels panels;

	private final SeatGuesses guesses;

	private final PanelPage page;

	PanelController(Panels panels, SeatGuesses guesses, PanelPage page) {
		this.guesses = guesses;
		this.panels = panels;
		this.page = page;
	}

	@GetMapping("/{event}")
	String show(@PathVariable EventId event, @RequestParam(defaultValue = "") String place, Model model) {
		model.addAttribute("form", new SeatForm(place, "", ""));
		return this.page.show(event, model);
	}

	@PostMapping("/{event}/seats")
	String seat(@PathVariable EventId event, @ModelAttribute("form") SeatForm form, BindingResult errors, Model model,
			Actor actor, RedirectAttributes redirect) {
		AtomicReference<SeatView> seated = new AtomicReference<>();
		if (Submission.refused(errors, () -> seated.set(this.panels.seat(form.seating(event), actor)))) {
			return this.page.show(event, model);
		}
		SeatView seat = seated.get();
		OfficialView official = seat.official();
		Notice.give(redirect, "panels.panel.seated", seat.label(), (official != null) ? official.name() : "");
		return back(event);
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

	@PostMapping("/seat/{seat}/vacate")
	String vacate(@PathVariable SeatId seat, @RequestParam int version, Actor actor, RedirectAttributes redirect) {
		SeatView left = this.panels.vacate(seat, version, actor);
		Notice.give(redirect, (left.code() != null) ? "panels.panel.vacated-code" : "panels.panel.vacated",
				left.label());
		return back(left.event());
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
