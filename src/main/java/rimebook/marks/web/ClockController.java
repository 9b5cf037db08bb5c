package rimebook.marks.web;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.SegmentId;
import rimebook.marks.InterruptionCause;
import rimebook.marks.PerformanceClock;
import rimebook.marks.PerformanceId;
import rimebook.marks.ReskateMarking;
import rimebook.pages.Notice;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;

/** What the referee does with the clock of the performance on the ice. */
@Controller
@RequestMapping("/desk/stand/{segment}/clock")
class ClockController {

	private final PerformanceClock clock;

	private final StandPage page;

	ClockController(PerformanceClock clock, StandPage page) {
		this.clock = clock;
		this.page = page;
	}

	@PostMapping("/start")
	String start(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int touches,
			Actor actor, RedirectAttributes redirect) {
		return act(segment, redirect, "", () -> this.clock.start(performance, touches, actor));
	}

	@PostMapping("/stop")
	String stop(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int touches,
			Actor actor, RedirectAttributes redirect) {
		return act(segment, redirect, "", () -> this.clock.stop(performance, touches, actor));
	}

	@PostMapping("/interrupt")
	String interrupt(@PathVariable SegmentId segment, @RequestParam PerformanceId performance,
			@RequestParam int touches, @RequestParam InterruptionCause cause, Actor actor,
			RedirectAttributes redirect) {
		return act(segment, redirect, "marks.clock.done.interrupted",
				() -> this.clock.interrupt(performance, touches, cause, actor));
	}

	/** What was typed is shown again where it was refused. */
	@PostMapping("/resume")
	String resume(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int touches,
			@RequestParam(defaultValue = "") String point, Actor actor, RedirectAttributes redirect) {
		redirect.addFlashAttribute("point", point);
		return act(segment, redirect, "marks.clock.done.resumed",
				() -> this.clock.resume(performance, touches, point, actor));
	}

	@PostMapping("/reskate")
	String reskate(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int touches,
			@RequestParam(required = false) @Nullable ReskateMarking marking, Actor actor,
			RedirectAttributes redirect) {
		return act(segment, redirect, "marks.clock.done.reskate",
				() -> this.clock.reskate(performance, touches, marking, actor));
	}

	@PostMapping("/take-back")
	String takeBack(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int touches,
			Actor actor, RedirectAttributes redirect) {
		return act(segment, redirect, "marks.clock.done.taken-back",
				() -> this.clock.takeBack(performance, touches, actor));
	}

	/** A proposed notice only fills the form; it is told to the panel when it is sent. */
	@PostMapping("/notice")
	String fill(@PathVariable SegmentId segment, @ModelAttribute(StandPage.REMARK) RemarkForm form, Model model) {
		return this.page.show(segment, null, model);
	}

	/** A start or stop shows itself; what the panel was told of is confirmed. */
	private static String act(SegmentId segment, RedirectAttributes redirect, String done, Runnable act) {
		try {
			act.run();
			if (!done.isEmpty()) {
				Notice.give(redirect, done);
			}
		}
		catch (RuleViolationException | ConflictException ex) {
			redirect.addFlashAttribute("refusal", ex.getMessage());
		}
		return "redirect:/desk/stand/" + segment;
	}

}
