package rimebook.entries.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.ForTheAnnouncer;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;

/** What a team lets be told of it in a segment: written down by the secretary. */
@Controller
@RequestMapping("/desk/entries/entry/{entry}/announcer/{segment}")
class AnnouncerFactsController {

	private final Entries entries;

	private final ForTheAnnouncer facts;

	private final Competitions competitions;

	AnnouncerFactsController(Entries entries, ForTheAnnouncer facts, Competitions competitions) {
		this.entries = entries;
		this.facts = facts;
		this.competitions = competitions;
	}

	@GetMapping
	String show(@PathVariable EntryId entry, @PathVariable SegmentId segment, Model model) {
		EntryView view = this.entries.entry(entry);
		String page = page(view, segment, model);
		model.addAttribute("announcerForm", AnnouncerForm.of(this.facts.of(entry, segment)));
		return page;
	}

	@PostMapping
	String write(@PathVariable EntryId entry, @PathVariable SegmentId segment, AnnouncerForm announcerForm,
			BindingResult result, Actor actor, Model model, RedirectAttributes redirect) {
		EntryView view = this.entries.entry(entry);
		if (Submission.refused(result, () -> this.facts.write(announcerForm.order(entry, segment), actor))) {
			return page(view, segment, model);
		}
		Notice.give(redirect, "entries.announcer.kept", view.team().name());
		return "redirect:/desk/entries/entry/" + entry;
	}

	private String page(EntryView view, SegmentId segment, Model model) {
		EventView event = this.competitions.event(view.event());
		model.addAttribute("event", event);
		model.addAttribute("segment", event.segment(segment));
		model.addAttribute("entry", view);
		return "entries/announcer";
	}

}
