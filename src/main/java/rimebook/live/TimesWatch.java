package rimebook.live;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.timetable.TimetableDay;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.plan.Estimate;

/**
 * Notices that teams are expected at other times because time passed and nobody was
 * called. Asks once a minute, whoever follows: times are shown in minutes, and what a
 * call moves is told by its segment at once.
 */
@Component
class TimesWatch {

	private final Map<CompetitionId, Known> known = new ConcurrentHashMap<>();

	private final TimetableVersions versions;

	private final TimetableDay today;

	private final Clock clock;

	TimesWatch(TimetableVersions versions, TimetableDay today, Clock clock) {
		this.versions = versions;
		this.today = today;
		this.clock = clock;
	}

	/** What is expected, as it was when somebody first asked in this minute. */
	Moment.Times of(CompetitionView competition) {
		long minute = this.clock.instant().getEpochSecond() / 60;
		Known last = this.known.get(competition.id());
		if (last != null && last.minute() == minute) {
			return last.times();
		}
		Moment.Times times = read(competition);
		this.known.put(competition.id(), new Known(minute, times));
		return times;
	}

	private Moment.Times read(CompetitionView competition) {
		return this.versions.latest(competition.id())
			.map((version) -> this.today.now(version).estimate().expected())
			.map((expected) -> new Moment.Times(competition.id().toString(), shown(expected)))
			.orElse(Moment.Times.NONE);
	}

	private static int shown(List<Estimate.Expected> expected) {
		return expected.stream().map(TimesWatch::shown).toList().hashCode() & Integer.MAX_VALUE;
	}

	/** What a page tells of it. */
	private static Object shown(Estimate.Expected one) {
		return List.<Object>of(one.item(), String.valueOf(one.entry()), one.at().getEpochSecond() / 60,
				one.soonest().getEpochSecond() / 60, one.latest().getEpochSecond() / 60);
	}

	private record Known(long minute, Moment.Times times) {
	}

}
