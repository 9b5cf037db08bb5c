package rimebook.live;

import java.io.IOException;
import java.util.function.Supplier;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;

import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

import rimebook.results.Standings;

/** Every table of the public pages as CSV, at the address of the same data. */
@RestController
@RequestMapping("/api/public/competitions")
class PublicTablesController {

	private static final String EVENT = "/{competition}/events/{event}";

	private static final String SEGMENT = EVENT + "/segments/{segment}";

	private final RenditionCache renditions;

	private final PublicPlaces places;

	private final PublicLists lists;

	private final Standings standings;

	PublicTablesController(RenditionCache renditions, PublicPlaces places, PublicLists lists, Standings standings) {
		this.renditions = renditions;
		this.places = places;
		this.lists = lists;
		this.standings = standings;
	}

	@GetMapping("/{competition}/teams.csv")
	@Answers("The teams of all events")
	void teams(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		answer(request, response, competition, () -> PublicTable.ofTeams(this.lists.teams(competition)).csv());
	}

	@GetMapping("/{competition}/timetable.csv")
	@Answers("The timetable in force, a line an item and one a team")
	void timetable(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		answer(request, response, competition, () -> PublicTable.ofTimetable(this.lists.timetable(competition)).csv());
	}

	@GetMapping(EVENT + ".csv")
	@Answers("The newest combined standing of an event")
	void event(@PathVariable String competition, @PathVariable String event, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		answer(request, response, competition,
				() -> PublicTable.ofEvent(this.standings.latest(this.lists.event(competition, event).id()).orElse(null))
					.csv());
	}

	@GetMapping(EVENT + "/why/{one}/{other}.csv")
	@Answers("Two teams of an event, figure by figure")
	void whyInEvent(@PathVariable String competition, @PathVariable String event, @PathVariable String one,
			@PathVariable String other, HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition,
				() -> PublicTable.ofPair(this.places.pair(this.lists.event(competition, event), one, other).beside())
					.csv());
	}

	@GetMapping(SEGMENT + ".csv")
	@Answers("The newest standing of a segment with every mark")
	void standing(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition,
				() -> StandingCsv.of(this.places.segment(competition, event, segment).facts().version()));
	}

	@GetMapping(SEGMENT + "/order.csv")
	@Answers("The starting order")
	void order(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition,
				() -> PublicTable.ofOrder(this.places.segment(competition, event, segment).facts().starts()).csv());
	}

	@GetMapping(SEGMENT + "/course.csv")
	@Answers("The places of all teams after each team")
	void course(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> PublicTable
			.ofCourse(Courses
				.of(this.standings.versions(this.places.segment(competition, event, segment).facts().segment().id())))
			.csv());
	}

	@GetMapping(SEGMENT + "/chances.csv")
	@Answers("The places that teams can still get")
	void chances(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition,
				() -> PublicTable.ofChances(this.places.segment(competition, event, segment).facts().version()).csv());
	}

	@GetMapping(SEGMENT + "/versions.csv")
	@Answers("The published versions of a segment")
	void versions(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition,
				() -> PublicTable
					.ofVersions(this.standings
						.versions(this.places.segment(competition, event, segment).facts().segment().id()))
					.csv());
	}

	@GetMapping(SEGMENT + "/why/{one}/{other}.csv")
	@Answers("Two teams of a segment, figure by figure")
	void why(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			@PathVariable String one, @PathVariable String other, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		answer(request, response, competition,
				() -> PublicTable
					.ofPair(this.places.pair(this.places.segment(competition, event, segment), one, other).beside())
					.csv());
	}

	private void answer(HttpServletRequest request, HttpServletResponse response, String competition,
			Supplier<String> table) throws IOException {
		Rendition csv = this.renditions.get(RenditionKey.of(request), competition,
				(moment) -> Rendition.of("text/csv;charset=UTF-8", table.get()));
		Answer.with(csv, request, response);
	}

}
