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
import rimebook.competition.CompetitionView;
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

	private static final String ASKED = "asked";

	private final Competitions competitions;

	private final Cancellations cancellations;

	CancellationController(Competitions competitions, Cancellations cancellations) {
		this.competitions = competitions;
		this.cancellations = cancellations;
	}

	@ModelAttribute(ASKED)
	Asked asked(@PathVariable CompetitionId competition, @PathVariable EventId event, @PathVariable CancellationAct act,
			@RequestParam(required = false) @Nullable SegmentId segment) {
		EventView view = found(competition, event);
		String name = (segment == null) ? view.name() : view.name() + ", " + view.segment(segment).name();
		return new Asked(this.competitions.competition(competition), view, segment, name, act);
	}

	@GetMapping
	String ask(Model model) {
		model.addAttribute("form", new ReasonForm(0, ""));
		return PAGE;
	}

	@PostMapping
	String act(@ModelAttribute(name = ASKED, binding = false) Asked asked, @ModelAttribute("form") ReasonForm form,
			BindingResult result, Actor actor, RedirectAttributes redirect) {
		if (Submission.refused(result,
				() -> asked.act()
					.on(this.cancellations, new CancellationAct.Planned(asked.event().id(), asked.segment()),
							String.valueOf(form.reason()), actor))) {
			return PAGE;
		}
		Notice.give(redirect, "competition.plan.done." + asked.act(), asked.name());
		String path = "redirect:/desk/competitions/" + asked.competition().id();
		return asked.act().endsEvent(asked.segment()) ? path : path + "/events/" + asked.event().id();
	}

	private EventView found(CompetitionId competition, EventId id) {
		EventView event = this.competitions.event(id);
		if (!event.competition().equals(competition)) {
			throw NotFoundException.of("event", id);
		}
		return event;
	}

	/**
	 * What is asked about.
	 *
	 * @param segment one of the event's, {@code null} for the whole event
	 * @param name of the event, and of the segment if it is one
	 */
	record Asked(CompetitionView competition, EventView event, @Nullable SegmentId segment, String name,
			CancellationAct act) {
	}

}
