package rimebook.live;

import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.competition.RuleSets;
import rimebook.competition.SegmentView;
import rimebook.live.pictures.Grid;
import rimebook.live.pictures.Strips;
import rimebook.protests.Protests;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.shared.NotFoundException;

/** A segment's pages: its standing, its starting order, its earlier versions. */
@Controller
@RequestMapping("/follow/{competition}/{event}/{segment}")
class SegmentController {

	private final PageRenderer pages;

	private final Published published;

	private final SegmentReader reader;

	private final Standings standings;

	private final RuleSets ruleSets;

	private final VersionAnchors anchors;

	private final ExpectedTimes expected;

	private final Protests protests;

	SegmentController(PageRenderer pages, Published published, SegmentReader reader, Standings standings,
			RuleSets ruleSets, VersionAnchors anchors, ExpectedTimes expected, Protests protests) {
		this.protests = protests;
		this.expected = expected;
		this.pages = pages;
		this.published = published;
		this.reader = reader;
		this.standings = standings;
		this.ruleSets = ruleSets;
		this.anchors = anchors;
	}

	@GetMapping
	void standing(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		Address address = new Address(competition, event, segment);
		answer(request, response, address, "live/segment", (page) -> {
			SegmentFacts facts = facts(page);
			return page.pictured(page.links().segment(competition(page), event(page), facts.segment()), facts.version())
				.tells(competition(page), Headline.title(event(page), facts.segment()),
						this.reader.tidings(event(page), facts));
		});
	}

	@GetMapping("/order")
	void order(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, new Address(competition, event, segment), "live/order",
				(page) -> page.followsTimes(competition(page), List.of(facts(page).segment()))
					.with("planned", this.expected.planned(competition(page), facts(page).segment()))
					.with("when", this.expected.of(competition(page), facts(page).segment())));
	}

	/** What people rather look at than read. */
	@GetMapping("/pictures")
	void pictures(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, new Address(competition, event, segment), "live/pictures", (page) -> {
			ResultVersion version = facts(page).version();
			if (version == null) {
				return page.with("course", null);
			}
			return page.with("course", Courses.of(this.standings.versions(facts(page).segment().id())))
				.with("strips", Strips.of(version.standing()))
				.with("grid", Grid.of(version.standing()));
		});
	}

	@GetMapping("/versions")
	void versions(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, new Address(competition, event, segment), "live/versions", this::withVersions);
	}

	@GetMapping("/versions/{number:[1-9][0-9]{0,5}}")
	void version(@PathVariable String competition, @PathVariable String event, @PathVariable String segment,
			@PathVariable int number, HttpServletRequest request, HttpServletResponse response) throws IOException {
		answer(request, response, new Address(competition, event, segment), "live/version", (page) -> {
			SegmentFacts facts = facts(page);
			ResultVersion version = this.standings.version(facts.segment().id(), number)
				.orElseThrow(() -> NotFoundException.of("version", number));
			return withVersions(page).with("table", StandingTable.of(version))
				.with("anchor", this.anchors.of(version))
				.with("corrections", this.standings.corrections(facts.segment().id(), number));
		});
	}

	/** What the page of a segment always has, see {@link #answer}. */
	private static SegmentFacts facts(PageModel page) {
		return (SegmentFacts) Objects.requireNonNull(page.model().get("facts"));
	}

	private static EventView event(PageModel page) {
		return (EventView) Objects.requireNonNull(page.model().get("event"));
	}

	private static CompetitionView competition(PageModel page) {
		return (CompetitionView) Objects.requireNonNull(page.model().get("competition"));
	}

	private PageModel withVersions(PageModel page) {
		SegmentView segment = facts(page).segment();
		return page.with("versions", this.standings.versions(segment.id()));
	}

	private void answer(HttpServletRequest request, HttpServletResponse response, Address address, String template,
			UnaryOperator<PageModel> more) throws IOException {
		this.pages.answer(request, response, address.competition(), template, (page) -> {
			CompetitionView competition = this.published.competition(address.competition());
			EventView event = this.published.event(competition, address.event());
			SegmentView segment = this.published.segment(event, address.segment());
			SegmentFacts facts = this.reader.one(event, segment);
			page.follows(competition, List.of(segment))
				.with("event", event)
				.with("facts", facts)
				.with("protests", this.protests.pending(segment.id()))
				.with("fromMemory", this.ruleSets.fromMemory(event).size());
			page.with("anchor", this.anchors.of(facts.version()));
			page.with("why", page.links().why(competition, event, segment));
			page.with("table", (facts.version() != null) ? StandingTable.of(facts.version()) : null);
			page.with("corrections", this.standings.corrections(segment.id(), Integer.MAX_VALUE));
			return more.apply(page);
		});
	}

	/** A segment as the address names it. */
	private record Address(String competition, String event, String segment) {
	}

}
