package rimebook.live;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.regex.Pattern;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.results.TwoTeams;
import rimebook.shared.NotFoundException;

/**
 * Why one team is ahead of another, in a segment or in an event: each pair has an address
 * of its own, for the newest standing and for every version.
 */
@Controller
class WhyController {

	private static final String EVENT = "/follow/{competition}/{event}/why";

	private static final String SEGMENT = "/follow/{competition}/{event}/{segment}/why";

	private static final String ENTRY = "[0-9a-f-]{36}";

	private static final String PAIR = "/{one:" + ENTRY + "}/{other:" + ENTRY + "}";

	private static final String VERSION = "/{number:[1-9][0-9]{0,5}}";

	private static final Pattern ENTRIES = Pattern.compile(ENTRY + "/" + ENTRY);

	private final PageRenderer pages;

	private final Published published;

	private final SegmentReader segments;

	private final Standings standings;

	private final TwoTeams twoTeams;

	WhyController(PageRenderer pages, Published published, SegmentReader segments, Standings standings,
			TwoTeams twoTeams) {
		this.pages = pages;
		this.published = published;
		this.segments = segments;
		this.standings = standings;
		this.twoTeams = twoTeams;
	}

	@GetMapping({ EVENT, EVENT + PAIR, EVENT + PAIR + VERSION })
	void event(@PathVariable Map<String, String> path, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		this.pages.answer(request, response, path.get("competition"), "live/why", (page) -> {
			CompetitionView competition = this.published.competition(named(path, "competition"));
			EventView event = this.published.event(competition, named(path, "event"));
			page.follows(competition, event.segments())
				.with("event", event)
				.with("facts", null)
				.with("segments", this.segments.all(event))
				.with("why", page.links().why(competition, event));
			return filled(page, event, path,
					new Source(this.standings.latest(event.id()),
							(number) -> this.standings.version(event.id(), number),
							(said, one, other) -> this.twoTeams.inEvent(event, said, one, other)));
		});
	}

	@GetMapping({ SEGMENT, SEGMENT + PAIR, SEGMENT + PAIR + VERSION })
	void segment(@PathVariable Map<String, String> path, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		this.pages.answer(request, response, path.get("competition"), "live/why", (page) -> {
			CompetitionView competition = this.published.competition(named(path, "competition"));
			EventView event = this.published.event(competition, named(path, "event"));
			SegmentView segment = this.published.segment(event, named(path, "segment"));
			page.follows(competition, List.of(segment))
				.with("event", event)
				.with("facts", this.segments.one(event, segment))
				.with("segments", List.of())
				.with("why", page.links().why(competition, event, segment));
			return filled(page, event, path,
					new Source(this.standings.latest(segment.id()),
							(number) -> this.standings.version(segment.id(), number),
							(said, one, other) -> this.twoTeams.inSegment(event, segment, said, one, other)));
		});
	}

	/**
	 * The form of the choice; its answer depends on more than the path, so none is kept.
	 */
	@GetMapping({ EVENT + "/ask", SEGMENT + "/ask" })
	void ask(@RequestParam(defaultValue = "") String one, @RequestParam(defaultValue = "") String other,
			HttpServletRequest request, HttpServletResponse response) {
		String base = request.getRequestURI().replaceFirst("/ask$", "");
		String pair = one + "/" + other;
		boolean both = ENTRIES.matcher(pair).matches() && !one.equals(other);
		response.setStatus(HttpServletResponse.SC_SEE_OTHER);
		response.setHeader(HttpHeaders.LOCATION, base + (both ? "/" + pair : "") + PageLanguage.of(request).query());
	}

	private static String named(Map<String, String> path, String name) {
		return Objects.requireNonNull(path.get(name));
	}

	/**
	 * A pair of teams of the event that are not both in a version is told so; any other
	 * address leads nowhere.
	 */
	private PageModel filled(PageModel page, EventView event, Map<String, String> path, Source source) {
		ResultVersion newest = source.newest().orElse(null);
		String number = path.get("number");
		ResultVersion shown = (number == null) ? newest
				: source.versions()
					.apply(Integer.parseInt(number))
					.orElseThrow(() -> NotFoundException.of("version", number));
		StandingTable table = (shown != null) ? StandingTable.of(shown) : null;
		boolean asked = path.containsKey("one");
		Beside pair = asked ? pair(table, event, path, source) : null;
		return page.with("table", table)
			.with("newest", (newest != null) ? newest.number() : 0)
			.with("fixed", number != null)
			.with("missing", asked && pair == null)
			.with("pair", pair);
	}

	private @Nullable Beside pair(@Nullable StandingTable table, EventView event, Map<String, String> path,
			Source source) {
		String one = named(path, "one");
		String other = named(path, "other");
		if (one.equals(other) || !this.segments.knows(event, one) || !this.segments.knows(event, other)) {
			throw NotFoundException.of("entry", other);
		}
		return (table != null) ? Beside.of(table, one, other, source.reasons()).orElse(null) : null;
	}

	/**
	 * What a pair is looked for in.
	 *
	 * @param versions finds a version by its number
	 */
	private record Source(Optional<ResultVersion> newest, IntFunction<Optional<ResultVersion>> versions,
			Beside.Reasons reasons) {
	}

}
