package rimebook.music.web;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.music.MusicDeadlines;
import rimebook.music.MusicDesk;

/** Every segment with how many teams still lack music. */
@Controller
class MusicListController {

	private final Competitions competitions;

	private final MusicDesk desk;

	private final MusicDeadlines deadlines;

	MusicListController(Competitions competitions, MusicDesk desk, MusicDeadlines deadlines) {
		this.competitions = competitions;
		this.desk = desk;
		this.deadlines = deadlines;
	}

	@GetMapping("/desk/music")
	String list(Model model) {
		List<CompetitionView> all = this.competitions.all();
		List<CompetitionId> ids = all.stream().map(CompetitionView::id).toList();
		Map<CompetitionId, List<EventView>> events = this.competitions.events(ids);
		Map<CompetitionId, MusicDeadlines.Deadline> deadlines = this.deadlines.of(ids);
		Map<SegmentId, MusicDesk.Count> counts = this.desk
			.counts(events.values().stream().flatMap(List::stream).toList());
		model.addAttribute("competitions",
				all.stream()
					.map((competition) -> new CompetitionMusic(competition.id(), competition.name(),
							competition.state().isOpenToChange(), closes(competition, deadlines),
							segments(events.getOrDefault(competition.id(), List.of()), counts)))
					.toList());
		return "music/list";
	}

	private static @Nullable ZonedDateTime closes(CompetitionView competition,
			Map<CompetitionId, MusicDeadlines.Deadline> deadlines) {
		Instant closes = deadlines.getOrDefault(competition.id(), MusicDeadlines.Deadline.NONE).closesAt();
		return (closes != null) ? closes.atZone(competition.zone()) : null;
	}

	private static List<SegmentMusic> segments(List<EventView> events, Map<SegmentId, MusicDesk.Count> counts) {
		return events.stream()
			.flatMap((event) -> event.segments()
				.stream()
				.map((segment) -> SegmentMusic.of(event, segment,
						counts.getOrDefault(segment.id(), MusicDesk.Count.NONE))))
			.toList();
	}

	/**
	 * The music of one competition.
	 *
	 * @param open whether music is taken; once everything is final nobody waits for any
	 * @param closes until when it is taken, {@code null} for ever
	 */
	record CompetitionMusic(CompetitionId id, String name, boolean open, @Nullable ZonedDateTime closes,
			List<SegmentMusic> segments) {
	}

	/**
	 * The music of one segment.
	 *
	 * @param files how many can be played
	 * @param missing how many teams have none
	 */
	record SegmentMusic(SegmentId id, String name, int files, int missing, boolean cancelled) {

		private static SegmentMusic of(EventView event, SegmentView segment, MusicDesk.Count count) {
			return new SegmentMusic(segment.id(), event.name() + ", " + segment.name(), count.files(), count.missing(),
					event.isCancelled(segment.id()));
		}

	}

}
