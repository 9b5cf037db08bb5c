package rimebook.live;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentView;
import rimebook.timetable.TimetableVersions;
import rimebook.wording.Sentence;

/** The list of competitions, and a competition's and an event's own page. */
@Controller
class FollowController {

	private final PageRenderer pages;

	private final Published published;

	private final Board board;

	private final RuleSets ruleSets;

	private final EventReader events;

	private final VersionAnchors anchors;

	private final TimetableVersions timetables;

	private final ExpectedTimes expected;

	FollowController(PageRenderer pages, Published published, Board board, EventReader events, RuleSets ruleSets,
			VersionAnchors anchors, TimetableVersions timetables, ExpectedTimes expected) {
		this.expected = expected;
		this.timetables = timetables;
		this.pages = pages;
		this.published = published;
		this.board = board;
		this.ruleSets = ruleSets;
		this.events = events;
		this.anchors = anchors;
	}

	@GetMapping("/")
	void home(HttpServletRequest request, HttpServletResponse response) throws IOException {
		this.pages.answer(request, response, null, "live/home", (page) -> {
			List<CompetitionView> competitions = this.published.competitions();
			Map<String, Sentence> headlines = new HashMap<>();
			competitions.stream()
				.filter((view) -> view.state() == CompetitionState.RUNNING)
				.forEach((view) -> headlines.put(view.slug(),
						Headline.ofCompetition(this.published.events(view).stream().map(this.events::read).toList())));
			return page.with("competitions", competitions).with("headlines", headlines);
		});
	}

	/** What the browser kept of the record; only the browser knows. */
	@GetMapping("/record-seen")
	void recordSeen(HttpServletRequest request, HttpServletResponse response) throws IOException {
		this.pages.answer(request, response, null, "live/seen", (page) -> page);
	}

	/** What the words of the trade mean, each with its source. */
	@GetMapping("/follow/{competition}/words")
	void words(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		this.pages.answer(request, response, competition, "live/words",
				(page) -> page.with("competition", this.published.competition(competition))
					.with("terms", TradeWords.all()));
	}

	@GetMapping("/follow/{competition}")
	void competition(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		this.pages.answer(request, response, competition, "live/competition", (page) -> {
			CompetitionView view = this.published.competition(competition);
			List<EventFacts> events = this.published.events(view).stream().map(this.events::read).toList();
			Watched watched = Watched.of(events).orElse(null);
			return page.follows(view, segments(events))
				.with("events", events)
				.with("timetable", this.timetables.published(view.id()) > 0)
				.with("watched", watched)
				.with("news", (watched != null) ? this.events.tidings(watched) : Tidings.NONE)
				.tells(view, view.name(), Tidings.ofCompetition(events));
		});
	}

	@GetMapping("/follow/{competition}/{event}")
	void event(@PathVariable String competition, @PathVariable String event, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		this.pages.answer(request, response, competition, "live/event", (page) -> {
			CompetitionView view = this.published.competition(competition);
			EventFacts facts = this.events.read(this.published.event(view, event));
			return page.follows(view, facts.event().segments())
				.tells(view, facts.event().name(), this.events.tidings(facts))
				.with("why", page.links().why(view, facts.event()))
				.with("facts", facts)
				.with("anchor", this.anchors.of((facts.table() != null) ? facts.table().version() : null))
				.with("fromMemory", this.ruleSets.fromMemory(facts.event()).size());
		});
	}

	@GetMapping("/follow/{competition}/board")
	void board(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		this.pages.answer(request, response, competition, "live/board", (page) -> {
			CompetitionView view = this.published.competition(competition);
			List<EventView> all = this.published.events(view);
			page.followsTimes(view, all.stream().flatMap((event) -> event.segments().stream()).toList());
			BoardView board = this.board.of(all).orElse(null);
			return page.with("board", board)
				.with("when", (board != null) ? this.expected.of(view, board.facts().segment()) : Map.of())
				.tells(view, view.name(), (board != null) ? board.tidings() : Tidings.NONE)
				.with("anchor", this.anchors.of((board != null) ? board.facts().version() : null));
		});
	}

	private static List<SegmentView> segments(List<EventFacts> events) {
		return events.stream().flatMap((facts) -> facts.event().segments().stream()).toList();
	}

}
