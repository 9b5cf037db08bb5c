package rimebook.live;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.shared.NotFoundException;
import rimebook.timetable.TimetableDay;
import rimebook.timetable.TimetableVersions;

/** What the data says of a whole competition beside its results. */
@Component
class PublicLists {

	private final Published published;

	private final Entries entries;

	private final TimetableVersions timetables;

	private final TimetableDay today;

	PublicLists(Published published, Entries entries, TimetableVersions timetables, TimetableDay today) {
		this.published = published;
		this.entries = entries;
		this.timetables = timetables;
		this.today = today;
	}

	EventView event(String competition, String event) {
		return this.published.event(this.published.competition(competition), event);
	}

	/** The teams, event by event. */
	List<Feed.TeamItem> teams(String competition) {
		return this.published.events(this.published.competition(competition))
			.stream()
			.flatMap(
					(event) -> this.entries.ofEvent(event.id()).stream().map((entry) -> Feed.TeamItem.of(event, entry)))
			.toList();
	}

	/**
	 * The timetable in force.
	 * @throws NotFoundException if none is published
	 */
	TimetableDay.Day timetable(String slug) {
		CompetitionView competition = this.published.competition(slug);
		return this.today.now(this.timetables.latest(competition.id())
			.orElseThrow(() -> NotFoundException.of("timetable", competition.slug())));
	}

}
