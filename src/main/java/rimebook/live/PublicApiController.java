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

	private final PublicLists lists;

	private final Standings standings;

	private final PublicPlaces places;

	private final VersionAnchors anchors;

	private final ExpectedTimes expected;

	PublicApiController(RenditionCache renditions, Published published, EventReader events, Standings standings,
			PublicPlaces places, PublicLists lists, VersionAnchors anchors, ExpectedTimes expected) {
		this.expected = expected;
		this.renditions = renditions;
		this.published = published;
		this.events = events;
		this.standings = standings;
		this.places = places;
		this.lists = lists;
		this.anchors = anchors;
	}

	@GetMapping
	@Answers(value = "All competitions that are public", body = Feed.CompetitionList.class)
	void list(HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, null, () -> new Feed.CompetitionList(
				this.published.competitions().stream().map(Feed.CompetitionItem::of).toList()));
	}

	@GetMapping("/{competition}")
	@Answers(value = "A competition with its events and where each segment stands", body = Feed.CompetitionBody.class)
	void competition(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		answer(request, response, competition, () -> {
			CompetitionView view = this.published.competition(competition);
			List<EventFacts> events = this.published.events(view).stream().map(this.events::read).toList();
			return new Feed.CompetitionBody(Feed.CompetitionItem.of(view),
					events.stream().map(Feed.EventItem::of).toList(), Headline.ofCompetition(events).english());
		});
	}

	@GetMapping("/{competition}/teams")
	@Answers(value = "The teams of all events", body = Feed.TeamList.class)
	void teams(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		answer(request, response, competition, () -> new Feed.TeamList(this.lists.teams(competition)));
	}

	@GetMapping("/{competition}/timetable")
	@Answers(value = "The timetable in force, with what is expected of today", body = TimetableFeed.TimetableBody.class)
	void timetable(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		answer(request, response, competition, () -> TimetableFeed.TimetableBody.of(this.lists.timetable(competition)));
	}

	@GetMapping("/{competition}/events/{event}")
	@Answers(value = "An event with its newest combined standing", body = Feed.EventBody.class)
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
	@Answers(
			value = "A segment with its newest standing, the state of things in a sentence and the team that was marked last",
			body = Feed.SegmentBody.class)
	void segment(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> {
			PublicPlaces.Place place = this.places.segment(competition, event, segment);
			return body(place, Optional.ofNullable(place.facts().version()));
		});
	}

	@GetMapping(SEGMENT + "/versions/{number:[1-9][0-9]{0,5}}")
	@Answers(value = "A segment with one of its published versions", body = Feed.SegmentBody.class)
	void version(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			@PathVariable int number, HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> {
			PublicPlaces.Place place = this.places.segment(competition, event, segment);
			ResultVersion version = this.standings.version(place.facts().segment().id(), number)
				.orElseThrow(() -> NotFoundException.of("version", number));
			return body(place, Optional.of(version));
		});
	}

	@GetMapping(SEGMENT + "/order")
	@Answers(value = "The starting order and how it was drawn", body = Feed.OrderBody.class)
	void order(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> {
			PublicPlaces.Place place = this.places.segment(competition, event, segment);
			StartingOrderView order = place.facts().order();
			return new Feed.OrderBody(Feed.CompetitionItem.of(place.competition()), event, segment,
					(order != null) ? Feed.DrawBody.of(order) : null,
					place.facts().starts().stream().map(Feed.StartItem::of).toList(), times(place));
		});
	}

	/** In starting order; whoever has no time is left out. */
	private List<Feed.TimeItem> times(PublicPlaces.Place place) {
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
	@Answers(value = "The places of all teams after each team", body = Feed.CourseBody.class)
	void course(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> Feed.CourseBody.of(Courses
			.of(this.standings.versions(this.places.segment(competition, event, segment).facts().segment().id()))));
	}

	/** Why one of two teams is ahead of the other, in the newest standing. */
	@GetMapping(SEGMENT + "/why/{one}/{other}")
	@Answers(value = "Which of two teams of a segment is ahead, and why", body = Feed.WhyBody.class)
	void why(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			@PathVariable String one, @PathVariable String other, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> {
			PublicPlaces.Pair pair = this.places.pair(this.places.segment(competition, event, segment), one, other);
			return Feed.WhyBody.of(pair.version(), pair.beside());
		});
	}

	/** The same in an event. */
	@GetMapping("/{competition}/events/{event}/why/{one}/{other}")
	@Answers(value = "Which of two teams of an event is ahead, and why", body = Feed.WhyBody.class)
	void whyInEvent(@PathVariable String competition, @PathVariable String event, @PathVariable String one,
			@PathVariable String other, HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition, () -> {
			EventView view = this.published.event(this.published.competition(competition), event);
			PublicPlaces.Pair pair = this.places.pair(view, one, other);
			return Feed.WhyBody.of(pair.version(), pair.beside());
		});
	}

	@GetMapping(SEGMENT + "/versions")
	@Answers(value = "The published versions of a segment, the newest first", body = Feed.VersionList.class)
	void versions(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, competition,
				() -> new Feed.VersionList(
						this.standings.versions(this.places.segment(competition, event, segment).facts().segment().id())
							.stream()
							.map(Feed.VersionItem::of)
							.toList()));
	}

	private Feed.SegmentBody body(PublicPlaces.Place place, Optional<ResultVersion> version) {
		Tidings tidings = this.places.tidings(place);
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

}
