package rimebook.draw.web;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/** The page of one segment's draw. */
@Controller
class DrawController {

	private static final String PAGE = "draw/segment";

	private final StartingOrderDraw draw;

	private final Competitions competitions;

	private final Entries entries;

	DrawController(StartingOrderDraw draw, Competitions competitions, Entries entries) {
		this.draw = draw;
		this.competitions = competitions;
		this.entries = entries;
	}

	@GetMapping("/desk/draw/{segment}")
	String show(@PathVariable SegmentId segment, Model model) {
		model.addAttribute("form", DrawForm.of(this.draw.offer(segment)));
		return page(segment, model);
	}

	@PostMapping("/desk/draw/{segment}")
	String draw(@PathVariable SegmentId segment, @ModelAttribute("form") DrawForm form, BindingResult errors,
			Model model, Actor actor, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.draw.draw(form.order(segment), actor))) {
			return page(segment, model);
		}
		Notice.give(redirect, "draw.segment.drawn");
		return "redirect:/desk/draw/" + segment;
	}

	/** Let teams that came after the draw follow those that were drawn. */
	@PostMapping("/desk/draw/{segment}/late")
	String add(@PathVariable SegmentId segment, @ModelAttribute("late") AdditionForm late, BindingResult errors,
			Model model, Actor actor, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.draw.add(late.order(segment), actor))) {
			model.addAttribute("form", DrawForm.of(this.draw.offer(segment)));
			return page(segment, model);
		}
		Notice.give(redirect, "draw.late.added");
		return "redirect:/desk/draw/" + segment;
	}

	private String page(SegmentId segment, Model model) {
		StartingOrderDraw.LateTeams teams = this.draw.late(segment).orElse(null);
		model.addAttribute("lateTeams", teams);
		if (teams != null && !model.containsAttribute("late")) {
			model.addAttribute("late", AdditionForm.of(teams));
		}
		EventView event = this.competitions.eventOf(segment);
		model.addAttribute("event", event);
		model.addAttribute("segment", event.segment(segment));
		model.addAttribute("competition", this.competitions.competition(event.competition()));
		model.addAttribute("offer", this.draw.offer(segment));
		model.addAttribute("orders", orders(event, segment));
		return PAGE;
	}

	/** Every order of the segment, the one in force first. */
	private List<OrderPage> orders(EventView event, SegmentId segment) {
		String name = event.segment(segment).name();
		ZoneId zone = this.competitions.competition(event.competition()).zone();
		Map<EntryId, EntryView> entered = this.entries.ofEvent(event.id())
			.stream()
			.collect(Collectors.toMap(EntryView::id, Function.identity()));
		return this.draw.everDrawn(segment).stream().map((order) -> OrderPage.of(order, name, entered, zone)).toList();
	}

}
