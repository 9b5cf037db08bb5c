package rimebook.live;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
import rimebook.wording.Sentence;

/** The list of competitions, and a competition's and an event's own page. */
@Controller
class FollowController {

	/** So many lines of the day's plan answer what comes now. */
	private static final int PLANNED = 5;

	private final PageRenderer pages;

	private final Published published;

	private final RuleSets ruleSets;

	private final EventReader events;

	private final VersionAnchors anchors;

	private final DayAhead ahead;

	FollowController(PageRenderer pages, Published published, EventReader events, RuleSets ruleSets,
			VersionAnchors anchors, DayAhead ahead) {
		this.ahead = ahead;
		this.pages = pages;
		this.published = published;
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

	/** What browsers show where there is no network; they keep it and nothing else. */
	@GetMapping("/offline")
	void offline(HttpServletRequest request, HttpServletResponse response) throws IOException {
		this.pages.answer(request, response, null, "live/offline", (page) -> page);
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
			Optional<TimetablePage> day = this.ahead.of(view);
			return page.followsTimes(view, segments(events))
				.with("events", events)
				.with("timetable", day.isPresent())
				.with("day", day.map(TimetablePage::day).orElse(null))
				.with("plan", day.map(BoardTimetable::rows).stream().flatMap(List::stream).limit(PLANNED).toList())
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
				.pictured(page.links().event(view, facts.event()), facts.version())
				.tells(view, facts.event().name(), this.events.tidings(facts))
				.with("why", page.links().why(view, facts.event()))
				.with("facts", facts)
				.with("anchor", this.anchors.of((facts.table() != null) ? facts.table().version() : null))
				.with("fromMemory", this.ruleSets.fromMemory(facts.event()).size());
		});
	}

	private static List<SegmentView> segments(List<EventFacts> events) {
		return events.stream().flatMap((facts) -> facts.event().segments().stream()).toList();
	}

}
