package rimebook.stand.web;

import java.nio.charset.StandardCharsets;

import org.jspecify.annotations.Nullable;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.clock.InterruptionCause;
import rimebook.clock.PerformanceClock;
import rimebook.competition.SegmentId;
import rimebook.pages.Notice;
import rimebook.performances.PerformanceId;
import rimebook.performances.Reskates;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;

/**
 * What the referee does with the clock of the performance on the ice: a form for a page
 * without scripts, and the same form sent by a page that stays where it is.
 */
@Controller
@RequestMapping("/desk/stand/{segment}/clock")
class ClockController {

	/** Sent by the page that stays where it is: it wants no other page for an answer. */
	private static final String TOUCH = "Rink-Touch";

	private static final MediaType SENTENCE = new MediaType("text", "plain", StandardCharsets.UTF_8);

	private final PerformanceClock clock;

	private final StandPage page;

	ClockController(PerformanceClock clock, StandPage page) {
		this.clock = clock;
		this.page = page;
	}

	@PostMapping("/start")
	Object start(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int touches,
			@RequestHeader(name = TOUCH, defaultValue = "false") boolean inPage, Actor actor,
			RedirectAttributes redirect) {
		return act(segment, inPage, redirect, "", () -> this.clock.start(performance, touches, actor));
	}

	@PostMapping("/stop")
	Object stop(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int touches,
			@RequestHeader(name = TOUCH, defaultValue = "false") boolean inPage, Actor actor,
			RedirectAttributes redirect) {
		return act(segment, inPage, redirect, "", () -> this.clock.stop(performance, touches, actor));
	}

	@PostMapping("/interrupt")
	Object interrupt(@PathVariable SegmentId segment, @RequestParam PerformanceId performance,
			@RequestParam int touches, @RequestParam InterruptionCause cause,
			@RequestHeader(name = TOUCH, defaultValue = "false") boolean inPage, Actor actor,
			RedirectAttributes redirect) {
		return act(segment, inPage, redirect, "stand.clock.done.interrupted",
				() -> this.clock.interrupt(performance, touches, cause, actor));
	}

	/** What was typed is shown again where it was refused. */
	@PostMapping("/resume")
	Object resume(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int touches,
			@RequestParam(defaultValue = "") String point,
			@RequestHeader(name = TOUCH, defaultValue = "false") boolean inPage, Actor actor,
			RedirectAttributes redirect) {
		if (!inPage) {
			redirect.addFlashAttribute("point", point);
		}
		return act(segment, inPage, redirect, "stand.clock.done.resumed",
				() -> this.clock.resume(performance, touches, point, actor));
	}

	@PostMapping("/reskate")
	Object reskate(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int touches,
			@RequestParam(required = false) Reskates.@Nullable Marking marking,
			@RequestHeader(name = TOUCH, defaultValue = "false") boolean inPage, Actor actor,
			RedirectAttributes redirect) {
		return act(segment, inPage, redirect, "stand.clock.done.reskate",
				() -> this.clock.reskate(performance, touches, marking, actor));
	}

	@PostMapping("/take-back")
	Object takeBack(@PathVariable SegmentId segment, @RequestParam PerformanceId performance, @RequestParam int touches,
			@RequestParam(defaultValue = "0") int along,
			@RequestHeader(name = TOUCH, defaultValue = "false") boolean inPage, Actor actor,
			RedirectAttributes redirect) {
		return act(segment, inPage, redirect, "stand.clock.done.taken-back",
				() -> this.clock.takeBack(performance, touches, along, actor));
	}

	/** A proposed notice only fills the form; it is told to the panel when it is sent. */
	@PostMapping("/notice")
	String fill(@PathVariable SegmentId segment, @ModelAttribute(StandPage.REMARK) RemarkForm form, Model model) {
		return this.page.show(segment, null, model);
	}

	/** A start or stop shows itself; what the panel was told of is confirmed. */
	private static Object act(SegmentId segment, boolean inPage, RedirectAttributes redirect, String done,
			Runnable act) {
		try {
			act.run();
			if (inPage) {
				return ResponseEntity.noContent().build();
			}
			if (!done.isEmpty()) {
				Notice.give(redirect, done);
			}
		}
		catch (RuleViolationException | ConflictException ex) {
			if (inPage) {
				return ResponseEntity.status(HttpStatus.CONFLICT)
					.contentType(SENTENCE)
					.body(ex.sentence().in(LocaleContextHolder.getLocale()));
			}
			redirect.addFlashAttribute("refusal", ex.sentence());
		}
		return "redirect:/desk/stand/" + segment;
	}

}
