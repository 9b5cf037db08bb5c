package rimebook.live;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Stream;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.entries.PrintedNames;
import rimebook.rulings.Rulings;
import rimebook.shared.NotFoundException;

/** The teams of a competition: to be found by typing, and each with a page of its own. */
@Controller
@RequestMapping("/follow/{competition}")
class TeamController {

	private final PageRenderer pages;

	private final Published published;

	private final EventReader events;

	private final Entries entries;

	private final Rulings rulings;

	private final ExpectedTimes expected;

	private final ObjectProvider<PrintedNames> names;

	TeamController(PageRenderer pages, Published published, EventReader events, Entries entries, Rulings rulings,
			ExpectedTimes expected, ObjectProvider<PrintedNames> names) {
		this.names = names;
		this.rulings = rulings;
		this.expected = expected;
		this.pages = pages;
		this.published = published;
		this.events = events;
		this.entries = entries;
	}

	@GetMapping("/find")
	void all(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		list(competition, "", request, response);
	}

	@GetMapping("/find/named/{name:[a-z0-9]{1," + FoldedTeam.MOST + "}}")
	void named(@PathVariable String competition, @PathVariable String name, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		list(competition, name, request, response);
	}

	private void list(String slug, String typed, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		this.pages.answer(request, response, slug, "live/find", (page) -> {
			CompetitionView competition = this.published.competition(slug);
			List<SegmentView> segments = this.published.events(competition)
				.stream()
				.flatMap((event) -> event.segments().stream())
				.toList();
			return page.follows(competition, segments).with("typed", typed).with("teams", teams(competition, typed));
		});
	}

	/** The form of the search, which leads on to an address that can be kept. */
	@GetMapping("/find/ask")
	void ask(@PathVariable String competition, @RequestParam(defaultValue = "") String name, HttpServletRequest request,
			HttpServletResponse response) {
		String folded = FoldedTeam.of(name);
		response.setStatus(HttpServletResponse.SC_SEE_OTHER);
		response.setHeader(HttpHeaders.LOCATION, request.getRequestURI().replaceFirst("/ask$", "")
				+ (folded.isEmpty() ? "" : "/named/" + folded) + PageLanguage.of(request).query());
	}

	private List<Found> teams(CompetitionView competition, String typed) {
		Predicate<EntryView> meant = (entry) -> FoldedTeam.of(entry.team().name()).contains(typed)
				|| FoldedTeam.of(entry.team().club().name()).contains(typed);
		return this.published.events(competition)
			.stream()
			.flatMap((event) -> entries(event).filter(meant).map((entry) -> new Found(event, entry)))
			.sorted(Comparator.comparing((Found found) -> FoldedTeam.of(found.entry().team().name())))
			.toList();
	}

	private Stream<EntryView> entries(EventView event) {
		return this.entries.ofEvent(event.id()).stream();
	}

	@GetMapping("/team/{entry}")
	void team(@PathVariable String competition, @PathVariable UUID entry, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		this.pages.answer(request, response, competition, "live/team", (page) -> {
			CompetitionView view = this.published.competition(competition);
			Found found = this.published.events(view)
				.stream()
				.flatMap((event) -> entries(event).map((one) -> new Found(event, one)))
				.filter((one) -> one.entry().id().value().equals(entry))
				.findFirst()
				.orElseThrow(() -> NotFoundException.of("entry", entry));
			List<SegmentView> segments = found.event().segments();
			return page.followsTimes(view, segments)
				.with("skaters", this.names.stream().flatMap((names) -> names.of(found.entry().id()).stream()).toList())
				.with("rulings", this.rulings.shownOf(found.entry().id()))
				.with("times", this.expected.ofTeam(view, entry))
				.with("team", TeamFacts.of(this.events.read(found.event()), found.entry()));
		});
	}

	/** A team of an event. */
	record Found(EventView event, EntryView entry) {
	}

}
