package rimebook.entries.web;

import java.util.Optional;

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

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.PlannedElements;
import rimebook.entries.RequiredElements;
import rimebook.entries.RequiredSets;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.wording.Sentence;

/** What a segment asks of planned elements: copied from a ready list, changed at will. */
@Controller
@RequestMapping("/desk/entries/required/{segment}")
class RequiredController {

	private final RequiredElements required;

	private final RequiredSets sets;

	private final PlannedElements plans;

	private final Competitions competitions;

	RequiredController(RequiredElements required, RequiredSets sets, PlannedElements plans, Competitions competitions) {
		this.required = required;
		this.sets = sets;
		this.plans = plans;
		this.competitions = competitions;
	}

	/** With a set its lines stand in the form; nothing is written before it is sent. */
	@GetMapping
	String show(@PathVariable SegmentId segment, @RequestParam(defaultValue = "") String set, Model model) {
		RequiredElements.RequiredView known = this.required.of(segment);
		Optional<RequiredSets.RequiredSet> chosen = this.sets.set(set);
		RequiredForm form = chosen.map((one) -> RequiredForm.of(one, known)).orElseGet(() -> RequiredForm.of(known));
		model.addAttribute("requiredForm", form);
		model.addAttribute("copying", chosen.isPresent());
		return page(segment, form, model);
	}

	@PostMapping
	String set(@PathVariable SegmentId segment, @ModelAttribute("requiredForm") RequiredForm form, BindingResult result,
			Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(result, () -> this.required.set(form.order(segment), actor))) {
			model.addAttribute("copying", false);
			return page(segment, form, model);
		}
		EventView event = this.competitions.eventOf(segment);
		Notice.give(redirect, "entries.required.kept", event.segment(segment).name());
		return "redirect:/desk/entries/required/" + segment;
	}

	private String page(SegmentId segment, RequiredForm form, Model model) {
		EventView event = this.competitions.eventOf(segment);
		model.addAttribute("event", event);
		model.addAttribute("segment", event.segment(segment));
		model.addAttribute("byTable", event.hasTechnicalPanel());
		model.addAttribute("refusal", this.plans.refusal(segment).orElse(Sentence.NONE));
		model.addAttribute("asked", this.required.asked(event, segment));
		model.addAttribute("sets", this.sets.fitting(event.hasTechnicalPanel()));
		model.addAttribute("copied", this.sets.set((form.copiedFrom() != null) ? form.copiedFrom() : "").orElse(null));
		return "entries/required";
	}

}
