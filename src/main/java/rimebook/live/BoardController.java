package rimebook.live;

import java.io.IOException;
import java.util.List;
import java.util.Map;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.shared.NotFoundException;

/** The big screens, each at an address of its own: now, standing, timetable, ceremony. */
@Controller
class BoardController {

	/** What can be read from the stands. */
	private static final int ROWS = 9;

	private final PageRenderer pages;

	private final Published published;

	private final Board board;

	private final EventReader events;

	private final VersionAnchors anchors;

	private final ExpectedTimes expected;

	private final DayAhead ahead;

	BoardController(PageRenderer pages, Published published, Board board, EventReader events, VersionAnchors anchors,
			ExpectedTimes expected, DayAhead ahead) {
		this.pages = pages;
		this.published = published;
		this.board = board;
		this.events = events;
		this.anchors = anchors;
		this.expected = expected;
		this.ahead = ahead;
	}

	@GetMapping("/follow/{competition}/board")
	void now(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		this.pages.answer(request, response, competition, "live/board", (page) -> onBoard(page, competition));
	}

	@GetMapping("/follow/{competition}/board/standing")
	void standing(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		this.pages.answer(request, response, competition, "live/board-standing", (page) -> {
			onBoard(page, competition);
			BoardView board = (BoardView) page.model().get("board");
			return page.with("segmentSheets", (board != null) ? Sheets.of(board.placed(), ROWS) : List.of())
				.with("eventSheets", (board != null) ? Sheets.of(board.inEvent(), ROWS) : List.of());
		});
	}

	@GetMapping("/follow/{competition}/board/timetable")
	void timetable(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		this.pages.answer(request, response, competition, "live/board-timetable", (page) -> {
			CompetitionView view = this.published.competition(competition);
			follows(page, view, this.published.events(view));
			TimetablePage shown = this.ahead.of(view).orElse(null);
			return page.with("page", shown)
				.with("sheets", (shown != null) ? Sheets.of(BoardTimetable.rows(shown), ROWS) : List.of());
		});
	}

	/** Nobody is called up yet. */
	@GetMapping("/follow/{competition}/{event}/ceremony")
	void ceremony(@PathVariable String competition, @PathVariable String event, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		ceremony(competition, event, 0, request, response);
	}

	/** So many places are called up, the third first. */
	@GetMapping("/follow/{competition}/{event}/ceremony/{step:[1-3]}")
	void ceremony(@PathVariable String competition, @PathVariable String event, @PathVariable int step,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		this.pages.answer(request, response, competition, "live/ceremony", (page) -> {
			CompetitionView view = this.published.competition(competition);
			EventFacts facts = this.events.read(this.published.event(view, event));
			Ceremony ceremony = Ceremony.of(facts);
			// A screen that shows a result which is opened again has to say so.
			if (!ceremony.steps().isEmpty() && step > ceremony.steps().size()) {
				throw NotFoundException.of("step", step);
			}
			int shown = Math.min(step, ceremony.steps().size());
			String own = page.links().ceremony(view, facts.event());
			return page.follows(view, facts.event().segments())
				.with("facts", facts)
				.with("ceremony", ceremony)
				.with("step", shown)
				.with("revealed", ceremony.steps().subList(0, shown))
				.with("onward",
						(shown < ceremony.steps().size()) ? page.links().ceremony(view, facts.event(), shown + 1)
								: null)
				.with("back", (shown == 0) ? null
						: (shown == 1) ? own : page.links().ceremony(view, facts.event(), shown - 1));
		});
	}

	private PageModel onBoard(PageModel page, String competition) {
		CompetitionView view = this.published.competition(competition);
		List<EventView> all = this.published.events(view);
		follows(page, view, all);
		BoardView board = this.board.of(all).orElse(null);
		return page.with("board", board)
			.with("when", (board != null) ? this.expected.of(view, board.facts().segment()) : Map.of())
			.tells(view, view.name(), (board != null) ? board.tidings() : Tidings.NONE)
			.with("anchor", this.anchors.of((board != null) ? board.facts().version() : null));
	}

	private static void follows(PageModel page, CompetitionView view, List<EventView> events) {
		page.followsTimes(view, events.stream().flatMap((event) -> event.segments().stream()).toList());
	}

}
