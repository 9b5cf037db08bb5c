package rimebook.technical;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;

import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.SegmentId;
import rimebook.pages.Notice;
import rimebook.performances.PerformanceId;
import rimebook.points.DeductionNotes;
import rimebook.points.LateDeductions;
import rimebook.points.ListAuthorisations;
import rimebook.points.TechnicalDesk;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What the technical desk does. Each act is answered with the parts of the page as they
 * are then and, where it was refused, with the reason; where somebody else was first,
 * with what the other did.
 */
@Controller
@RequestMapping("/desk/technical/{segment}")
class TechnicalActionController {

	private final TechnicalDesk desk;

	private final ListAuthorisations authorisations;

	private final DeductionNotes deductions;

	private final LateDeductions late;

	private final TechnicalComposer pages;

	TechnicalActionController(TechnicalDesk desk, ListAuthorisations authorisations, DeductionNotes deductions,
			LateDeductions late, TechnicalComposer pages) {
		this.desk = desk;
		this.authorisations = authorisations;
		this.deductions = deductions;
		this.late = late;
		this.pages = pages;
	}

	@PostMapping("/list")
	String edit(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int sequence,
			@RequestParam TechnicalDesk.Act act, @RequestParam(required = false) @Nullable UUID element,
			@RequestParam(defaultValue = "") String value, @RequestParam Map<String, String> seen, Actor actor,
			Model model, HttpServletResponse response) {
		return answer(segment, seen, model, response,
				() -> this.desk.edit(new TechnicalDesk.Edit(performance, sequence, act, element, value), actor),
				() -> this.desk.since(performance, sequence));
	}

	@PostMapping("/deductions")
	String deduct(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int sequence,
			@RequestParam QuickDeduction quick, @RequestParam Map<String, String> seen, Actor actor, Model model,
			HttpServletResponse response) {
		return answer(segment, seen, model, response, () -> this.deductions.addOnce(performance, sequence,
				new DeductionNotes.NoteDeductions.Item(quick.item(), quick.count()), actor), List::of);
	}

	@PostMapping("/deductions/back")
	String takeBack(@PathVariable SegmentId segment, @RequestParam PerformanceId performance,
			@RequestParam int sequence, @RequestParam int index, @RequestParam Map<String, String> seen, Actor actor,
			Model model, HttpServletResponse response) {
		return answer(segment, seen, model, response, () -> this.deductions.remove(performance, sequence, index, actor),
				List::of);
	}

	/** The controller has seen what was noted after the list was authorised. */
	@PostMapping("/deductions/seen")
	String see(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int sequence,
			@RequestParam Map<String, String> seen, Actor actor, Model model, HttpServletResponse response) {
		return answer(segment, seen, model, response, () -> this.late.see(performance, sequence, actor), List::of);
	}

	private String answer(SegmentId segment, Map<String, String> seen, Model model, HttpServletResponse response,
			Runnable act, Supplier<List<TechnicalDesk.Change>> others) {
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		try {
			act.run();
		}
		catch (RuleViolationException ex) {
			refused(HttpStatus.UNPROCESSABLE_CONTENT, ex.sentence(), List.of(), model, response);
		}
		catch (ConflictException ex) {
			boolean overtaken = ex.code().equals("list-sequence-taken");
			refused(HttpStatus.CONFLICT, ex.sentence(), overtaken ? others.get() : List.of(), model, response);
			model.addAttribute("overtaken", overtaken);
		}
		DeskParts parts = this.pages.parts(segment);
		parts.into(model);
		model.addAttribute("changed", parts.changed(seen));
		return "technical/live";
	}

	private static void refused(HttpStatus status, Sentence sentence, List<TechnicalDesk.Change> others, Model model,
			HttpServletResponse response) {
		response.setStatus(status.value());
		model.addAttribute("refusal", sentence);
		model.addAttribute("others", others);
	}

	@PostMapping("/authorisation")
	String authorise(@PathVariable SegmentId segment, @RequestParam PerformanceId performance,
			@RequestParam int sequence, Actor actor, RedirectAttributes redirect) {
		try {
			this.authorisations.authorise(performance, sequence, actor);
			Notice.give(redirect, "technical.desk.authorised");
			return "redirect:/desk/technical/" + segment;
		}
		catch (RuleViolationException | ConflictException ex) {
			redirect.addFlashAttribute("refusal", ex.sentence());
			return "redirect:/desk/technical/" + segment + "/read-back";
		}
	}

}
