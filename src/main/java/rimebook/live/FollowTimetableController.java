package rimebook.live;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.shared.NotFoundException;
import rimebook.timetable.TimetableDay;
import rimebook.timetable.TimetableVersion;
import rimebook.timetable.TimetableVersions;

/** The published timetable: a day, a team's own times, and calendars of both. */
@Controller
@RequestMapping("/follow/{competition}")
class FollowTimetableController {

	private final PageRenderer pages;

	private final RenditionCache renditions;

	private final Published published;

	private final TimetableVersions versions;

	private final TimetableDay today;

	private final Entries entries;

	private final MessageSource messages;

	FollowTimetableController(PageRenderer pages, RenditionCache renditions, Published published,
			TimetableVersions versions, TimetableDay today, Entries entries, MessageSource messages) {
		this.pages = pages;
		this.renditions = renditions;
		this.published = published;
		this.versions = versions;
		this.today = today;
		this.entries = entries;
		this.messages = messages;
	}

	@GetMapping("/timetable")
	void timetable(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		day(competition, null, request, response);
	}

	@GetMapping("/timetable/{day:[0-9]{4}-[0-9]{2}-[0-9]{2}}")
	void day(@PathVariable String competition,
			@PathVariable @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) @Nullable LocalDate day,
			HttpServletRequest request, HttpServletResponse response) throws IOException {
		this.pages.answer(request, response, competition, "live/timetable", (page) -> {
			CompetitionView view = this.published.competition(competition);
			List<EventView> events = this.published.events(view);
			page.followsTimes(view, events.stream().flatMap((event) -> event.segments().stream()).toList());
			TimetableVersion version = this.versions.latest(view.id()).orElse(null);
			if (version == null) {
				requireNoDay(day);
				return page.with("page", null)
					.with("version", null)
					.with("differences", List.of())
					.with("events", events);
			}
			TimetablePage shown = TimetablePage.of(this.today.now(version), day, view.zone());
			if (day != null && !shown.has(day)) {
				throw NotFoundException.of("timetable", day);
			}
			return page.with("page", shown)
				.with("version", version)
				.with("events", events)
				.with("differences", this.versions.differences(version));
		});
	}

	private static void requireNoDay(@Nullable LocalDate day) {
		if (day != null) {
			throw NotFoundException.of("timetable", day);
		}
	}

	@GetMapping("/timetable/team/{entry}")
	void team(@PathVariable String competition, @PathVariable EntryId entry, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		this.pages.answer(request, response, competition, "live/team-times", (page) -> {
			CompetitionView view = this.published.competition(competition);
			EventView event = eventOf(view, entry);
			page.followsTimes(view, event.segments());
			TimetableDay.Day now = this.today.now(inForce(view));
			return page.with("event", event)
				.with("entry", this.entries.entry(entry))
				.with("now", now)
				.with("times", TimetablePage.timesOf(now, entry.value()));
		});
	}

	@GetMapping("/timetable.ics")
	void calendar(@PathVariable String competition, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		calendar(competition, request, response, (calendar) -> calendar.all());
	}

	@GetMapping("/timetable/event/{event}.ics")
	void eventCalendar(@PathVariable String competition, @PathVariable String event, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		calendar(competition, request, response, (calendar) -> {
			EventView view = this.published.event(this.published.competition(competition), event);
			return calendar.ofEvent(view.id().value(), view.name());
		});
	}

	@GetMapping("/timetable/team/{entry}.ics")
	void teamCalendar(@PathVariable String competition, @PathVariable EntryId entry, HttpServletRequest request,
			HttpServletResponse response) throws IOException {
		calendar(competition, request, response, (calendar) -> {
			eventOf(this.published.competition(competition), entry);
			return calendar.ofTeam(entry.value(), this.entries.entry(entry).team().name());
		});
	}

	private void calendar(String competition, HttpServletRequest request, HttpServletResponse response,
			Function<TimetableCalendar, String> writer) throws IOException {
		RenditionKey key = RenditionKey.of(request);
		Rendition calendar = this.renditions.get(key, competition, (moment) -> {
			CompetitionView view = this.published.competition(competition);
			return Rendition.of(TimetableCalendar.TYPE, writer
				.apply(new TimetableCalendar(view, inForce(view), this.messages, key.pageLanguage().locale())));
		});
		Answer.with(calendar, request, response);
	}

	private TimetableVersion inForce(CompetitionView competition) {
		return this.versions.latest(competition.id())
			.orElseThrow(() -> NotFoundException.of("timetable", competition.slug()));
	}

	/** An entry of another competition is not there. */
	private EventView eventOf(CompetitionView competition, EntryId entry) {
		EntryView view = this.entries.entry(entry);
		return this.published.events(competition)
			.stream()
			.filter((event) -> event.id().equals(view.event()))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("entry", entry));
	}

}
