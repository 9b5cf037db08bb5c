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
import org.springframework.ui.ExtendedModelMap;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
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

	private static final String SEEN = "seen";

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

	@ModelAttribute(SEEN)
	SeenList seen(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int sequence,
			@RequestParam Map<String, String> parts) {
		return new SeenList(segment, performance, sequence, parts);
	}

	@PostMapping("/list")
	ModelAndView edit(@ModelAttribute(name = SEEN, binding = false) SeenList seen, @RequestParam TechnicalDesk.Act act,
			@RequestParam(required = false) @Nullable UUID element, @RequestParam(defaultValue = "") String value,
			Actor actor, HttpServletResponse response) {
		return answer(
				seen, response, () -> this.desk
					.edit(new TechnicalDesk.Edit(seen.performance(), seen.sequence(), act, element, value), actor),
				() -> this.desk.since(seen.performance(), seen.sequence()));
	}

	@PostMapping("/deductions")
	ModelAndView deduct(@ModelAttribute(name = SEEN, binding = false) SeenList seen, @RequestParam QuickDeduction quick,
			Actor actor, HttpServletResponse response) {
		return answer(seen, response, () -> this.deductions.addOnce(seen.performance(), seen.sequence(),
				new DeductionNotes.NoteDeductions.Item(quick.item(), quick.count()), actor), List::of);
	}

	@PostMapping("/deductions/back")
	ModelAndView takeBack(@ModelAttribute(name = SEEN, binding = false) SeenList seen, @RequestParam int index,
			Actor actor, HttpServletResponse response) {
		return answer(seen, response, () -> this.deductions.remove(seen.performance(), seen.sequence(), index, actor),
				List::of);
	}

	/** The controller has seen what was noted after the list was authorised. */
	@PostMapping("/deductions/seen")
	ModelAndView see(@ModelAttribute(name = SEEN, binding = false) SeenList seen, Actor actor,
			HttpServletResponse response) {
		return answer(seen, response, () -> this.late.see(seen.performance(), seen.sequence(), actor), List::of);
	}

	private ModelAndView answer(SeenList seen, HttpServletResponse response, Runnable act,
			Supplier<List<TechnicalDesk.Change>> others) {
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		Model model = new ExtendedModelMap();
		try {
			act.run();
		}
		catch (RuleViolationException ex) {
			response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
			refused(ex.sentence(), List.of(), model);
		}
		catch (ConflictException ex) {
			boolean overtaken = ex.code().equals("list-sequence-taken");
			response.setStatus(HttpStatus.CONFLICT.value());
			refused(ex.sentence(), overtaken ? others.get() : List.of(), model);
			model.addAttribute("overtaken", overtaken);
		}
		DeskParts parts = this.pages.parts(seen.segment());
		parts.into(model);
		model.addAttribute("changed", parts.changed(seen.parts()));
		return new ModelAndView("technical/live", model.asMap());
	}

	private static void refused(Sentence sentence, List<TechnicalDesk.Change> others, Model model) {
		model.addAttribute("refusal", sentence);
		model.addAttribute("others", others);
	}

	@PostMapping("/authorisation")
	String authorise(@ModelAttribute(name = SEEN, binding = false) SeenList seen, Actor actor,
			RedirectAttributes redirect) {
		try {
			this.authorisations.authorise(seen.performance(), seen.sequence(), actor);
			Notice.give(redirect, "technical.desk.authorised");
			return "redirect:/desk/technical/" + seen.segment();
		}
		catch (RuleViolationException | ConflictException ex) {
			redirect.addFlashAttribute("refusal", ex.sentence());
			return "redirect:/desk/technical/" + seen.segment() + "/read-back";
		}
	}

	/**
	 * What whoever acts was looking at.
	 *
	 * @param sequence which version of the list that the act is about
	 * @param parts the prints of the parts of the page, by their name
	 */
	record SeenList(SegmentId segment, PerformanceId performance, int sequence, Map<String, String> parts) {
	}

}
