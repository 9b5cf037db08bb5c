package rimebook.stand.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.SegmentId;
import rimebook.stand.StandView;
import rimebook.timetable.TimetableDay;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.plan.Estimate;
import rimebook.wording.Sentence;

/**
 * Tells the referee when the next team is expected and how late that is. The stand asks
 * several times a second, so that what was told is told again for a while.
 */
@Component
class Punctuality {

	private static final Duration A_WHILE = Duration.ofSeconds(5);

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

	private final Map<SegmentId, Told> told = new ConcurrentHashMap<>();

	private final TimetableVersions versions;

	private final TimetableDay today;

	private final Clock clock;

	Punctuality(TimetableVersions versions, TimetableDay today, Clock clock) {
		this.versions = versions;
		this.today = today;
		this.clock = clock;
	}

	/** The sentence; none where no timetable says anything of the segment today. */
	Sentence of(StandView view) {
		SegmentId segment = view.segment().id();
		Instant now = this.clock.instant();
		Told last = this.told.get(segment);
		if (last != null && now.isBefore(last.until())) {
			return last.sentence();
		}
		Sentence sentence = tell(view.at().competition(), segment);
		this.told.values().removeIf((old) -> !now.isBefore(old.until()));
		this.told.put(segment, new Told(sentence, now.plus(A_WHILE)));
		return sentence;
	}

	private Sentence tell(CompetitionView competition, SegmentId segment) {
		return this.versions.latest(competition.id())
			.flatMap((version) -> this.today.now(version).of(segment.value()).stream().findFirst())
			.map((next) -> sentence(next, competition.zone()))
			.orElse(Sentence.NONE);
	}

	private static Sentence sentence(Estimate.Expected next, ZoneId zone) {
		String time = TIME.format(next.at().atZone(zone));
		int late = next.minutesLate();
		return (late == 0) ? Sentence.of("stand.punctual", time)
				: Sentence.of((late > 0) ? "stand.late" : "stand.early", time, Math.abs(late));
	}

	private record Told(Sentence sentence, Instant until) {
	}

}
