package rimebook.protests.web;

import java.math.BigDecimal;

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
import rimebook.panels.SeatId;
import rimebook.performances.Amendment;
import rimebook.performances.PerformanceId;
import rimebook.placement.MarkWords;
import rimebook.placement.MarksAmendment;
import rimebook.points.LineAmendment;
import rimebook.points.PointsLine;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.protests.ProtestView;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.CardMarks;
import rimebook.wording.Sentence;

/** Corrections of closed cards: one official proposes, another decides. */
@Controller
@RequestMapping("/desk/protests/{segment}/corrections")
class CorrectionsController {

	private static final String FORM = "protests/propose";

	private static final String DECISION = "protests/correction";

	private final ProtestsComposer pages;

	private final ClosedChoices choices;

	private final CorrectionLines lines;

	private final Corrections corrections;

	CorrectionsController(ProtestsComposer pages, ClosedChoices choices, CorrectionLines lines,
			Corrections corrections) {
		this.pages = pages;
		this.choices = choices;
		this.lines = lines;
		this.corrections = corrections;
	}

	@GetMapping("/new")
	String proposeForm(@PathVariable SegmentId segment, @ModelAttribute("form") CorrectionForm form, Model model,
			HttpServletRequest request) {
		RestrictedAct.CORRECT.require(request);
		return proposePage(segment, model);
	}

	@PostMapping("/new")
	String propose(@PathVariable SegmentId segment, @ModelAttribute("form") CorrectionForm form, BindingResult result,
			Model model, RedirectAttributes redirect, HttpServletRequest request, Actor actor) {
		RestrictedAct.CORRECT.require(request);
		if (Submission.refused(result, () -> propose(segment, form, actor))) {
			return proposePage(segment, model);
		}
		Notice.give(redirect, "protests.propose.proposed");
		return "redirect:/desk/protests/" + segment;
	}

	private void propose(SegmentId segment, CorrectionForm form, Actor actor) {
		PerformanceId performance = closedPerformance(segment, form);
		Amendment amendment = this.choices.isJudgedByPoints(segment) ? line(form) : marks(form);
		this.corrections.propose(
				new Corrections.ProposeCorrection(new Amendment.SupposedChange<>(performance, seat(form), amendment),
						form.getReason(), "", protest(form)),
				actor);
	}

	private static LineAmendment line(CorrectionForm form) {
		PointsLine line = PointsLine.parse(form.getLine());
		Integer value = line.read(form.getValue());
		if (value == null) {
			throw new RuleViolationException("mark-not-valid", "value", Sentence.of("protests.mark-not-valid"));
		}
		return LineAmendment.of(line, value);
	}

	private static MarksAmendment marks(CorrectionForm form) {
		return new MarksAmendment(new CardMarks(mark("first", form.getFirst()), mark("second", form.getSecond())));
	}

	private PerformanceId closedPerformance(SegmentId segment, CorrectionForm form) {
		String performance = form.getPerformance();
		if (this.choices.closedPerformances(segment).stream().noneMatch((one) -> one.value().equals(performance))) {
			throw new RuleViolationException("performance-not-closed", "performance",
					Sentence.of("protests.performance-not-closed"));
		}
		return PerformanceId.of(performance);
	}

	private static SeatId seat(CorrectionForm form) {
		return Given.read("seat", form.getSeat(), SeatId::of, Sentence.of("protests.judge-missing"));
	}

	private static ProtestView.@Nullable ProtestId protest(CorrectionForm form) {
		return form.getProtest().isBlank() ? null : Given.read("protest", form.getProtest(), ProtestView.ProtestId::of,
				Sentence.of("protests.protest-missing"));
	}

	private static int mark(String field, @Nullable BigDecimal mark) {
		if (mark == null) {
			throw RuleViolationException.ofField("field-missing", field, Sentence.of("protests.mark-missing"));
		}
		return MarkWords.read(field, mark);
	}

	private String proposePage(SegmentId segment, Model model) {
		model.addAttribute("page", this.pages.of(segment));
		model.addAttribute("lines", this.choices.lines(segment));
		model.addAttribute("performances", this.choices.closedPerformances(segment));
		model.addAttribute("seats", this.choices.seats(segment));
		model.addAttribute("closed", this.choices.closedCards(segment));
		model.addAttribute("upheld", this.pages.upheld(segment));
		return FORM;
	}

	@GetMapping("/{correction}")
	String show(@PathVariable SegmentId segment, @PathVariable CorrectionView.CorrectionId correction,
			@ModelAttribute("form") DecisionForm form, HttpServletRequest request, Model model) {
		form.setVersion(decisionPage(segment, correction, request, model).version());
		return DECISION;
	}

	@PostMapping("/{correction}/approval")
	String approve(@PathVariable SegmentId segment, @PathVariable CorrectionView.CorrectionId correction,
			@ModelAttribute("form") DecisionForm form, BindingResult result, Model model, RedirectAttributes redirect,
			HttpServletRequest request, Actor actor) {
		return answer(segment, correction, request, model, redirect, "protests.correction.approved", result,
				() -> this.corrections.approve(correction, form.getVersion(), actor));
	}

	@PostMapping("/{correction}/rejection")
	String reject(@PathVariable SegmentId segment, @PathVariable CorrectionView.CorrectionId correction,
			@ModelAttribute("form") DecisionForm form, BindingResult result, Model model, RedirectAttributes redirect,
			HttpServletRequest request, Actor actor) {
		return answer(segment, correction, request, model, redirect, "protests.correction.rejected", result,
				() -> this.corrections.reject(correction, form.getVersion(), form.getGrounds(), actor));
	}

	private String answer(SegmentId segment, CorrectionView.CorrectionId correction, HttpServletRequest request,
			Model model, RedirectAttributes redirect, String done, BindingResult result, Runnable act) {
		RestrictedAct.CORRECT.require(request);
		if (Submission.refused(result, act)) {
			decisionPage(segment, correction, request, model);
			return DECISION;
		}
		Notice.give(redirect, done);
		return "redirect:/desk/protests/" + segment;
	}

	/** What cannot be tabulated, or cannot be so any more, is said in place of it. */
	private void effect(CorrectionView.CorrectionId id, Model model) {
		try {
			this.corrections.refusal(id)
				.ifPresentOrElse((refusal) -> model.addAttribute("refusal", refusal),
						() -> model.addAttribute("effect", this.corrections.effect(id)));
		}
		catch (RuleViolationException ex) {
			model.addAttribute("refusal", ex.sentence());
		}
	}

	private CorrectionView decisionPage(SegmentId segment, CorrectionView.CorrectionId id, HttpServletRequest request,
			Model model) {
		CorrectionView view = this.corrections.correction(id);
		if (!view.segment().equals(segment)) {
			throw NotFoundException.of("correction", id);
		}
		model.addAttribute("page", this.pages.of(segment));
		model.addAttribute("line", this.lines.of(view));
		model.addAttribute("mayDecide",
				RestrictedAct.CORRECT.isOf(request) && view.state() == CorrectionView.State.PROPOSED);
		if (view.state() == CorrectionView.State.PROPOSED) {
			effect(id, model);
		}
		return view;
	}

}
