package rimebook.keying;

import java.util.Optional;

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

import rimebook.competition.SegmentId;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.paper.PaperKeying;
import rimebook.paper.SeatPaper;
import rimebook.shared.Actor;

/**
 * The judges' paper cards at the keying desk: two people key each card in, and what
 * differs is settled with the paper in the hand.
 */
@Controller
@RequestMapping("/desk/keying/{segment}")
class PaperController {

	private static final String CARD = "keying/card";

	private static final String SETTLE = "keying/settle";

	private static final String PAGE = "page";

	private static final String PAPER = "paper";

	private final KeyingComposer pages;

	private final PaperKeying keying;

	PaperController(KeyingComposer pages, PaperKeying keying) {
		this.pages = pages;
		this.keying = keying;
	}

	@ModelAttribute(PAGE)
	KeyingPage page(@PathVariable SegmentId segment, @RequestParam(defaultValue = "") String performance,
			@RequestParam(defaultValue = "") String closed, Actor actor) {
		return closed.isEmpty() ? this.pages.of(segment, performance, actor)
				: this.pages.ofClosed(segment, closed, actor);
	}

	/** The card that the address names; {@code null} where all are shown. */
	@ModelAttribute(PAPER)
	@Nullable SeatPaper paper(@ModelAttribute(name = PAGE, binding = false) KeyingPage page,
			@PathVariable(required = false) @Nullable String address) {
		return (address != null) ? page.paper(address) : null;
	}

	@GetMapping
	String show() {
		return "keying/keying";
	}

	@GetMapping("/cards/{address}")
	String card(@ModelAttribute(name = PAGE, binding = false) KeyingPage page,
			@ModelAttribute(name = PAPER, binding = false) SeatPaper paper, Model model) {
		if (paper.stage() == SeatPaper.Stage.DIFFER) {
			return settlePage(page, page.address(paper.seat()));
		}
		model.addAttribute("form", PaperForm.of(page, paper));
		return CARD;
	}

	@PostMapping("/cards/{address}")
	String key(@ModelAttribute(name = PAGE, binding = false) KeyingPage page,
			@ModelAttribute(name = PAPER, binding = false) SeatPaper paper, @ModelAttribute("form") PaperForm form,
			BindingResult errors, Actor actor, RedirectAttributes redirect) {
		if (form.isAbout(page, errors)) {
			form.fitted(page).check(page, errors);
		}
		SeatPaper[] keyed = new SeatPaper[1];
		if (Submission.refused(errors, () -> keyed[0] = this.keying.key(form.performanceGiven(), paper.seat().id(),
				form.marks(page), actor))) {
			form.fitted(page);
			return CARD;
		}
		return next(keyed[0], page, actor, redirect);
	}

	private String next(SeatPaper keyed, KeyingPage before, Actor actor, RedirectAttributes redirect) {
		KeyingPage page = before.isClosed() ? before
				: this.pages.of(before.segment().id(), before.performance(), actor);
		if (keyed.stage() == SeatPaper.Stage.DIFFER) {
			return settlePage(page, page.address(keyed.seat()));
		}
		Notice.give(redirect, "keying.desk.keyed." + keyed.stage(), keyed.seat().label());
		Optional<SeatPaper> next = page.isClosed() ? Optional.empty() : page.nextToKey(keyed);
		return next.map((paper) -> cardPage(page, page.address(paper.seat()))).orElse(back(page));
	}

	@GetMapping("/cards/{address}/settle")
	String difference(@ModelAttribute(name = PAGE, binding = false) KeyingPage page,
			@ModelAttribute(name = PAPER, binding = false) SeatPaper paper, Model model) {
		if (paper.stage() != SeatPaper.Stage.DIFFER) {
			return back(page);
		}
		model.addAttribute("form", PaperForm.toSettle(page, paper));
		return SETTLE;
	}

	@PostMapping("/cards/{address}/settle")
	String settle(@ModelAttribute(name = PAGE, binding = false) KeyingPage page,
			@ModelAttribute(name = PAPER, binding = false) SeatPaper paper, @ModelAttribute("form") PaperForm form,
			BindingResult errors, Actor actor, RedirectAttributes redirect) {
		if (form.isAbout(page, errors)) {
			form.fitted(page).check(page, errors);
		}
		SeatPaper[] settled = new SeatPaper[1];
		if (Submission.refused(errors, () -> settled[0] = this.keying.settle(form.performanceGiven(), paper.seat().id(),
				form.sight(), form.marks(page), actor))) {
			form.fitted(page);
			return SETTLE;
		}
		Notice.give(redirect, "keying.desk.settled." + settled[0].stage(), paper.seat().label());
		return back(page);
	}

	private static String settlePage(KeyingPage page, String card) {
		return cardPage(page, card + "/settle");
	}

	private static String cardPage(KeyingPage page, String card) {
		return "redirect:/desk/keying/" + page.segment().id() + "/cards/" + card + page.query();
	}

	private static String back(KeyingPage page) {
		return "redirect:/desk/keying/" + page.segment().id() + page.query();
	}

}
