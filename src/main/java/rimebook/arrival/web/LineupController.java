package rimebook.arrival.web;

import jakarta.validation.Valid;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

import rimebook.arrival.LineupView;
import rimebook.arrival.Lineups;
import rimebook.competition.Competitions;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.rosters.Rosters;
import rimebook.shared.Actor;
import rimebook.shared.NotFoundException;

/**
 * The referee's word on who was on the ice in a segment, where it was otherwise than
 * kept.
 */
@Controller
@RequestMapping("/desk/arrival/lineup/{entry}/{segment}")
class LineupController {

	private static final String FORM = "arrival/lineup";

	private final Lineups lineups;

	private final Rosters rosters;

	private final Entries entries;

	private final Competitions competitions;

	LineupController(Lineups lineups, Rosters rosters, Entries entries, Competitions competitions) {
		this.lineups = lineups;
		this.rosters = rosters;
		this.entries = entries;
		this.competitions = competitions;
	}

	@ModelAttribute
	void page(@PathVariable EntryId entry, @PathVariable SegmentId segment, Model model) {
		EntryView team = this.entries.entry(entry);
		model.addAttribute("team", team);
		model.addAttribute("segment", this.competitions.segment(segment));
		model.addAttribute("kept", kept(entry, segment));
		model.addAttribute("now", this.rosters.of(entry).onIce());
	}

	private LineupView kept(EntryId entry, SegmentId segment) {
		return this.lineups.of(entry)
			.stream()
			.filter((one) -> one.segment().equals(segment))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("lineup", segment));
	}

	@GetMapping
	String form(@PathVariable EntryId entry, @PathVariable SegmentId segment, Model model) {
		model.addAttribute("lineupForm", new LineupForm("", kept(entry, segment).number()));
		return FORM;
	}

	@PostMapping
	String correct(@PathVariable EntryId entry, @PathVariable SegmentId segment, @Valid LineupForm lineupForm,
			BindingResult errors, Actor actor, RedirectAttributes redirect) {
		if (Submission.refused(errors,
				() -> this.lineups.correct(entry, segment, lineupForm.seen(), lineupForm.reason(), actor))) {
			return FORM;
		}
		Notice.give(redirect, "arrival.lineup.kept");
		return "redirect:/desk/arrival/entry/" + entry;
	}

}
