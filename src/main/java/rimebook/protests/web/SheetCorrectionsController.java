package rimebook.protests.web;

import jakarta.servlet.http.HttpServletRequest;
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

import rimebook.competition.SegmentId;
import rimebook.pages.Given;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.performances.Amendment;
import rimebook.performances.PerformanceId;
import rimebook.points.SheetAmendment;
import rimebook.protests.Corrections;
import rimebook.protests.ProtestView;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.points.JudgedElement;
import rimebook.wording.Sentence;

/** Proposals to correct what the technical panel sent: an element, or a deduction. */
@Controller
@RequestMapping("/desk/protests/{segment}/corrections/new/{what}")
class SheetCorrectionsController {

	private static final String VIEW = "protests/propose-sheet";

	private final ProtestsComposer pages;

	private final ClosedChoices choices;

	private final Corrections corrections;

	SheetCorrectionsController(ProtestsComposer pages, ClosedChoices choices, Corrections corrections) {
		this.pages = pages;
		this.choices = choices;
		this.corrections = corrections;
	}

	@GetMapping
	String ask(@PathVariable SegmentId segment, @PathVariable String what,
			@ModelAttribute("form") SheetCorrectionForm form, Model model, HttpServletRequest request) {
		RestrictedAct.CORRECT.require(request);
		return page(segment, isElement(what), model);
	}

	@PostMapping
	String propose(@PathVariable SegmentId segment, @PathVariable String what,
			@ModelAttribute("form") SheetCorrectionForm form, BindingResult result, Model model,
			RedirectAttributes redirect, HttpServletRequest request, Actor actor) {
		RestrictedAct.CORRECT.require(request);
		boolean element = isElement(what);
		if (Submission.refused(result, () -> this.corrections.propose(proposal(segment, element, form), actor))) {
			return page(segment, element, model);
		}
		Notice.give(redirect, "protests.propose.proposed");
		return "redirect:/desk/protests/" + segment;
	}

	private static boolean isElement(String what) {
		if (!what.equals("element") && !what.equals("deduction")) {
			throw NotFoundException.of("page", what);
		}
		return what.equals("element");
	}

	private Corrections.ProposeCorrection proposal(SegmentId segment, boolean element, SheetCorrectionForm form) {
		SheetPlace place = SheetPlace.parse(Given.text(form.line()), element);
		return new Corrections.ProposeCorrection(
				new Amendment.SupposedChange<>(performance(segment, form), null,
						element ? element(place, form) : deduction(place, form)),
				Given.text(form.reason()), Given.text(form.agreed()), protest(form));
	}

	private static Amendment element(SheetPlace place, SheetCorrectionForm form) {
		String code = Given.text(form.code()).strip();
		if (code.isEmpty() && place.further()) {
			throw new RuleViolationException("field-missing", "code", Sentence.of("protests.code-missing"));
		}
		if (code.length() > 20 || code.contains(" ")) {
			throw new RuleViolationException("code-malformed", "code", Sentence.of("protests.code-malformed"));
		}
		JudgedElement.ElementWorth worth = form.worth();
		return code.isEmpty() ? place.nothing() : new SheetAmendment.ElementAmendment(place.number(), place.further(),
				code, (worth != null) ? worth : JudgedElement.ElementWorth.COUNTS);
	}

	private static Amendment deduction(SheetPlace place, SheetCorrectionForm form) {
		String item = Given.text(form.item());
		if (item.isEmpty()) {
			if (place.further()) {
				throw new RuleViolationException("field-missing", "item", Sentence.of("protests.item-missing"));
			}
			return place.nothing();
		}
		String count = Given.text(form.count()).strip();
		if (!count.matches("[1-9]\\d{0,2}")) {
			throw new RuleViolationException("count-malformed", "count", Sentence.of("protests.count-malformed"));
		}
		return new SheetAmendment.DeductionAmendment(place.number(), place.further(), item, Integer.parseInt(count));
	}

	private PerformanceId performance(SegmentId segment, SheetCorrectionForm form) {
		String given = Given.text(form.performance());
		if (this.choices.closedPerformances(segment).stream().noneMatch((one) -> one.value().equals(given))) {
			throw new RuleViolationException("performance-not-closed", "performance",
					Sentence.of("protests.performance-not-closed"));
		}
		return PerformanceId.of(given);
	}

	private static ProtestView.@Nullable ProtestId protest(SheetCorrectionForm form) {
		String given = Given.text(form.protest());
		return given.isBlank() ? null
				: Given.read("protest", given, ProtestView.ProtestId::of, Sentence.of("protests.protest-missing"));
	}

	private String page(SegmentId segment, boolean element, Model model) {
		if (!this.choices.isJudgedByPoints(segment)) {
			throw new NotFoundException("not-by-points", Sentence.of("protests.not-by-points"));
		}
		model.addAttribute("page", this.pages.of(segment));
		model.addAttribute("what", element ? "element" : "deduction");
		model.addAttribute("performances", this.choices.closedPerformances(segment));
		model.addAttribute("places", this.choices.places(segment, element));
		model.addAttribute("worths", JudgedElement.ElementWorth.values());
		model.addAttribute("items", this.choices.items(segment));
		model.addAttribute("sheets", this.choices.closedSheets(segment, element));
		model.addAttribute("upheld", this.pages.upheld(segment));
		return VIEW;
	}

}
