package rimebook.live;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.draw.StartingOrderView;
import rimebook.results.ResultVersion;
import rimebook.competition.SegmentView;
import rimebook.results.Standings;
import rimebook.timetable.plan.Estimate;
import rimebook.results.TwoTeams;
import rimebook.shared.NotFoundException;

/** The public side as data, kept as bytes like the pages. */
@RestController
@RequestMapping("/api/public/competitions")
class PublicApiController {

	private static final String SEGMENT = "/{competition}/events/{event}/segments/{segment}";

	private static final String JSON = "application/json";

	/** Its own mapper, so that no setting of the house changes what programs rely on. */
	private final JsonMapper json = JsonMapper.builder().build();

	private final RenditionCache renditions;

	private final Published published;

	private final EventReader events;

	private final SegmentReader segments;

	private final Standings standings;

	private final TwoTeams twoTeams;

	private final VersionAnchors anchors;

	private final ExpectedTimes expected;

	PublicApiController(RenditionCache renditions, Published published, EventReader events, SegmentReader segments,
			Standings standings, TwoTeams twoTeams, VersionAnchors anchors, ExpectedTimes expected) {
		this.expected = expected;
		this.renditions = renditions;
		this.published = published;
		this.events = events;
		this.segments = segments;
		this.standings = standings;
		this.twoTeams = twoTeams;
		this.anchors = anchors;
	}

	@GetMapping
	void list(HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, null, () -> new Feed.CompetitionList(
				this.published.competitions().stream().map(Feed.CompetitionItem::of).toList()));
	}

	@GetMapping("/{competition}")
	void competition(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		answer(request, response, competition, () -> {
			CompetitionView view = this.published.competition(competition);
			List<EventFacts> events = this.published.events(view).stream().map(this.events::read).toList();
			return new Feed.CompetitionBody(Feed.CompetitionItem.of(view),
					events.stream().map(Feed.EventItem::of).toList(), Headline.ofCompetition(events).english());
		});
	}

	@GetMapping("/{competition}/events/{event}")
	void event(@PathVariable String competition, @PathVariable String event, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> {
			CompetitionView view = this.published.competition(competition);
			EventFacts facts = this.events.read(this.published.event(view, event));
			Feed.StandingBody standing = (facts.table() != null) ? standing(facts.table().version()) : null;
			Tidings tidings = this.events.tidings(facts);
			return new Feed.EventBody(Feed.CompetitionItem.of(view), Feed.EventItem.of(facts), standing,
					tidings.headline().english(), Feed.JustInBody.ofNullable(tidings.justIn()));
		});
	}

	@GetMapping(SEGMENT)
	void segment(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> {
			Place place = place(competition, event, segment);
			return body(place, Optional.ofNullable(place.facts().version()));
		});
	}

	@GetMapping(SEGMENT + "/versions/{number:[1-9][0-9]{0,5}}")
	void version(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			@PathVariable int number, HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> {
			Place place = place(competition, event, segment);
			ResultVersion version = this.standings.version(place.facts().segment().id(), number)
				.orElseThrow(() -> NotFoundException.of("version", number));
			return body(place, Optional.of(version));
		});
	}

	@GetMapping(SEGMENT + "/order")
	void order(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> {
			Place place = place(competition, event, segment);
			StartingOrderView order = place.facts().order();
			return new Feed.OrderBody(Feed.CompetitionItem.of(place.competition()), event, segment,
					(order != null) ? Feed.DrawBody.of(order) : null,
					place.facts().starts().stream().map(Feed.StartItem::of).toList(), times(place));
		});
	}

	/** In starting order; whoever has no time is left out. */
	private List<Feed.TimeItem> times(Place place) {
		SegmentView segment = place.facts().segment();
		Map<String, Instant> planned = this.expected.planned(place.competition(), segment);
		Map<String, Estimate.Expected> when = this.expected.of(place.competition(), segment);
		return place.facts()
			.starts()
			.stream()
			.map(Start::entry)
			.filter(planned::containsKey)
			.map((entry) -> Feed.TimeItem.of(entry, Objects.requireNonNull(planned.get(entry)), when.get(entry)))
			.toList();
	}

	/** The places of all teams after each team. */
	@GetMapping(SEGMENT + "/course")
	void course(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> Feed.CourseBody
			.of(Courses.of(this.standings.versions(place(competition, event, segment).facts().segment().id()))));
	}

	/** Why one of two teams is ahead of the other, in the newest standing. */
	@GetMapping(SEGMENT + "/why/{one}/{other}")
	void why(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			@PathVariable String one, @PathVariable String other, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> {
			Place place = place(competition, event, segment);
			ResultVersion version = place.facts().version();
			return Optional.ofNullable(version)
				.flatMap((found) -> Beside.of(StandingTable.of(found), one, other,
						(said, first, second) -> this.twoTeams.inSegment(place.event(), place.facts().segment(), said,
								first, second)))
				.map((pair) -> Feed.WhyBody.of(Objects.requireNonNull(version), pair))
				.orElseThrow(() -> NotFoundException.of("entry", one));
		});
	}

	@GetMapping(SEGMENT + ".csv")
	void csv(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		Rendition csv = this.renditions.get(RenditionKey.of(request), competition, (moment) -> Rendition
			.of("text/csv;charset=UTF-8", StandingCsv.of(place(competition, event, segment).facts().version())));
		Answer.with(csv, request, response);
	}

	private Place place(String competition, String event, String segment) {
		CompetitionView view = this.published.competition(competition);
		EventView found = this.published.event(view, event);
		return new Place(view, found, this.segments.one(found, this.published.segment(found, segment)));
	}

	private Feed.SegmentBody body(Place place, Optional<ResultVersion> version) {
		Tidings tidings = this.segments.tidings(place.event(), place.facts());
		return new Feed.SegmentBody(Feed.CompetitionItem.of(place.competition()), place.event().slug(),
				Feed.SegmentItem.of(place.facts()), version.map(this::standing).orElse(null),
				tidings.headline().english(), Feed.JustInBody.ofNullable(tidings.justIn()));
	}

	private Feed.StandingBody standing(ResultVersion version) {
		return Feed.StandingBody.of(version, this.anchors.of(version));
	}

	private void answer(HttpServletRequest request, HttpServletResponse response, @Nullable String competition,
			Supplier<Object> body) throws IOException {
		Rendition rendition = this.renditions.get(RenditionKey.of(request), competition,
				(moment) -> Rendition.of(JSON, this.json.writeValueAsString(body.get())));
		Answer.with(rendition, request, response);
	}

	private record Place(CompetitionView competition, EventView event, SegmentFacts facts) {
	}

}
