package rimebook.competition.web;

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

import rimebook.competition.Cancellations;
import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;

/** Asks once before an event or a segment is cancelled, brought back or removed. */
@Controller
@RequestMapping("/desk/competitions/{competition}/events/{event}/plan/{act}")
class CancellationController {

	private static final String PAGE = "competition/cancellation";

	private final Competitions competitions;

	private final Cancellations cancellations;

	CancellationController(Competitions competitions, Cancellations cancellations) {
		this.competitions = competitions;
		this.cancellations = cancellations;
	}

	@GetMapping
	String ask(@PathVariable CompetitionId competition, @PathVariable EventId event, @PathVariable CancellationAct act,
			@RequestParam(required = false) @Nullable SegmentId segment, Model model) {
		model.addAttribute("form", new ReasonForm(0, ""));
		return page(competition, event, act, segment, model);
	}

	@PostMapping
	String act(@PathVariable CompetitionId competition, @PathVariable EventId event, @PathVariable CancellationAct act,
			@RequestParam(required = false) @Nullable SegmentId segment, @ModelAttribute("form") ReasonForm form,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		String name = name(found(competition, event), segment);
		if (Submission.refused(result, () -> act.on(this.cancellations, new CancellationAct.Planned(event, segment),
				String.valueOf(form.reason()), actor))) {
			return page(competition, event, act, segment, model);
		}
		Notice.give(redirect, "competition.plan.done." + act, name);
		String path = "redirect:/desk/competitions/" + competition;
		return act.endsEvent(segment) ? path : path + "/events/" + event;
	}

	private String page(CompetitionId competition, EventId id, CancellationAct act, @Nullable SegmentId segment,
			Model model) {
		EventView event = found(competition, id);
		model.addAttribute("competition", this.competitions.competition(competition));
		model.addAttribute("event", event);
		model.addAttribute("segment", segment);
		model.addAttribute("name", name(event, segment));
		model.addAttribute("act", act);
		return PAGE;
	}

	private static String name(EventView event, @Nullable SegmentId segment) {
		return (segment == null) ? event.name() : event.name() + ", " + event.segment(segment).name();
	}

	private EventView found(CompetitionId competition, EventId id) {
		EventView event = this.competitions.event(id);
		if (!event.competition().equals(competition)) {
			throw NotFoundException.of("event", id);
		}
		return event;
	}

}
