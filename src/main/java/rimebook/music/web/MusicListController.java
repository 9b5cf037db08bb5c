package rimebook.music.web;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

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
		model.addAttribute("competitions", this.competitions.all().stream().map(this::competition).toList());
		return "music/list";
	}

	private CompetitionMusic competition(CompetitionView competition) {
		Instant closes = this.deadlines.of(competition.id()).closesAt();
		return new CompetitionMusic(competition.id(), competition.name(),
				Optional.ofNullable(closes).map((at) -> at.atZone(competition.zone())).orElse(null),
				this.competitions.events(competition.id())
					.stream()
					.flatMap((event) -> event.segments().stream().map((segment) -> segment(event, segment)))
					.toList());
	}

	private SegmentMusic segment(EventView event, SegmentView segment) {
		MusicDesk.View view = this.desk.of(segment.id());
		return new SegmentMusic(segment.id(), event.name() + ", " + segment.name(), view.files(), view.missing().size(),
				event.isCancelled(segment.id()));
	}

	/**
	 * The music of one competition.
	 *
	 * @param closes until when it is taken, {@code null} for ever
	 */
	record CompetitionMusic(CompetitionId id, String name, @Nullable ZonedDateTime closes,
			List<SegmentMusic> segments) {
	}

	/**
	 * The music of one segment.
	 *
	 * @param files how many can be played
	 * @param missing how many teams have none
	 */
	record SegmentMusic(SegmentId id, String name, int files, int missing, boolean cancelled) {
	}

}
