package rimebook.timetable.web;

import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.UnderWay;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;
import rimebook.shared.Actor;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.Timetables;

/**
 * The timetables that say otherwise than what everybody reads, after a draw for example.
 */
@Component
class TimetableWaiting implements WaitingList {

	private final UnderWay underWay;

	private final Timetables timetables;

	private final TimetableVersions versions;

	TimetableWaiting(UnderWay underWay, Timetables timetables, TimetableVersions versions) {
		this.underWay = underWay;
		this.timetables = timetables;
		this.versions = versions;
	}

	@Override
	public Stream<Waiting> waiting(Actor viewer) {
		return this.underWay
			.competitions(CompetitionState.ENTRIES_OPEN, CompetitionState.ENTRIES_CLOSED, CompetitionState.RUNNING)
			.filter((competition) -> this.versions.published(competition.id()) > 0)
			.map(this::line)
			.filter((line) -> line.count() > 0);
	}

	private Waiting line(CompetitionView competition) {
		return new Waiting(45, "timetable.waiting.publish",
				this.versions.unpublished(this.timetables.plan(competition.id())).size(),
				new Waiting.Place(competition.name(), ""), "/desk/timetable/" + competition.id());
	}

}
