package rimebook.live;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.timetable.TimetableDay;
import rimebook.timetable.TimetableVersions;

/** What the timetable in force says of the day that it is, or of the next. */
@Component
class DayAhead {

	private final TimetableVersions timetables;

	private final TimetableDay today;

	DayAhead(TimetableVersions timetables, TimetableDay today) {
		this.timetables = timetables;
		this.today = today;
	}

	/** The day; none before a timetable is published. */
	Optional<TimetablePage> of(CompetitionView competition) {
		return this.timetables.latest(competition.id())
			.map((version) -> TimetablePage.of(this.today.now(version), null, competition.zone()));
	}

}
