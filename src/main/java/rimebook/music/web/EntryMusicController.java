package rimebook.music.web;

import java.util.List;

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

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.music.Music;
import rimebook.music.MusicDeadlines;
import rimebook.music.MusicDesk;
import rimebook.music.MusicView;
import rimebook.pages.Notice;
import rimebook.pages.Submission;
import rimebook.shared.Actor;
import rimebook.wording.Sentence;

/** The music of one team: what was handed in for each segment, and handing in. */
@Controller
@RequestMapping("/desk/music/entry/{entry}")
class EntryMusicController {

	private static final String FORM = "music/hand-in";

	private final Entries entries;

	private final Competitions competitions;

	private final Music music;

	private final MusicDesk desk;

	private final MusicDeadlines deadlines;

	EntryMusicController(Entries entries, Competitions competitions, Music music, MusicDesk desk,
			MusicDeadlines deadlines) {
		this.entries = entries;
		this.competitions = competitions;
		this.music = music;
		this.desk = desk;
		this.deadlines = deadlines;
	}

	@GetMapping
	String show(@PathVariable EntryId entry, Model model) {
		EventView event = about(entry, model);
		model.addAttribute("segments", this.music.of(entry).stream().map((view) -> row(event, view)).toList());
		return "music/entry";
	}

	private SegmentRow row(EventView event, MusicView view) {
		SegmentView segment = event.segment(view.segment());
		List<FileRow> files = view.versions()
			.stream()
			.map((version) -> new FileRow(version, this.desk.found(segment, version)))
			.toList();
		return new SegmentRow(segment, view, files, event.whyCancelled(segment.id()));
	}

	@GetMapping("/{segment}")
	String handInForm(@PathVariable EntryId entry, @PathVariable SegmentId segment,
			@ModelAttribute("form") HandInForm form, Model model) {
		return form(entry, segment, model);
	}

	@PostMapping("/{segment}")
	String handIn(@PathVariable EntryId entry, @PathVariable SegmentId segment, @ModelAttribute("form") HandInForm form,
			BindingResult errors, Actor actor, Model model, RedirectAttributes redirect) {
		if (Submission.refused(errors, () -> this.music.handIn(form.order(entry, segment), actor))) {
			return form(entry, segment, model);
		}
		Notice.give(redirect, "music.hand-in.done", this.entries.entry(entry).team().name());
		return "redirect:/desk/music/entry/" + entry;
	}

	@PostMapping("/{segment}/on-site")
	String onSite(@PathVariable EntryId entry, @PathVariable SegmentId segment, @RequestParam boolean onSite,
			Actor actor, RedirectAttributes redirect) {
		this.music.onSite(entry, segment, onSite, actor);
		Notice.give(redirect, onSite ? "music.on-site.noted" : "music.on-site.taken-back",
				this.entries.entry(entry).team().name());
		return "redirect:/desk/music/entry/" + entry;
	}

	private String form(EntryId entry, SegmentId id, Model model) {
		EventView event = about(entry, model);
		SegmentView segment = event.segment(id);
		model.addAttribute("segment", segment);
		model.addAttribute("window", this.desk.window(segment));
		model.addAttribute("late", this.deadlines.isLate(event.competition()));
		model.addAttribute("most", this.desk.mostBytes());
		return FORM;
	}

	private EventView about(EntryId entry, Model model) {
		EntryView view = this.entries.entry(entry);
		EventView event = this.competitions.event(view.event());
		model.addAttribute("entry", view);
		model.addAttribute("event", event);
		CompetitionView competition = this.competitions.competition(event.competition());
		model.addAttribute("zone", competition.zone());
		model.addAttribute("open", competition.state().isOpenToChange());
		return event;
	}

	/**
	 * The music for one segment.
	 *
	 * @param files the newest first
	 * @param cancelled why the segment does not take place; empty if it does
	 */
	record SegmentRow(SegmentView segment, MusicView music, List<FileRow> files, String cancelled) {
	}

	/** One version, and how it lies in the window. */
	record FileRow(MusicView.Version version, MusicDesk.Found found) {

		/** How long it is and how that lies in the window. */
		public Sentence length() {
			return this.found.words();
		}

	}

}
