package rimebook.timetable;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.timetable.plan.Pace;
import rimebook.timetable.plan.PlanRules;
import rimebook.timetable.plan.Programme;
import rimebook.wording.Sentence;

/**
 * How long it took today until all cards were closed, by the way of judging, so that the
 * plan of what is still to come can have it. What a rotation took longer or shorter than
 * published ({@link Pace}) is put to that time as a whole.
 */
@Service
@Transactional(readOnly = true)
public class MeasuredMarking {

	private static final int LONGEST = 3600;

	private final Timetables timetables;

	private final TimetableVersions versions;

	private final TimetableDay today;

	MeasuredMarking(Timetables timetables, TimetableVersions versions, TimetableDay today) {
		this.timetables = timetables;
		this.versions = versions;
		this.today = today;
	}

	/**
	 * What was measured today by the published timetable, placement judging first; empty
	 * where none is published, and for a way of judging that the competition has not.
	 */
	public List<Measure> of(CompetitionId id) {
		return this.versions.latest(id)
			.map((version) -> measure(this.today.now(version), this.timetables.plan(id)))
			.orElseGet(List::of);
	}

	private List<Measure> measure(TimetableDay.Day day, PlanView plan) {
		PlanRules.TeamTime published = this.timetables.rules(day.version().competition(), day.version().plan()).team();
		return Stream.of(false, true).flatMap((points) -> {
			Set<UUID> segments = plan.programme()
				.segments()
				.stream()
				.filter((segment) -> segment.points() == points)
				.map(Programme.Segment::id)
				.collect(Collectors.toSet());
			Pace pace = Pace.onDay(day.version().timetable(), day.skated(), day.at(), segments);
			long seconds = published.marking(points) + pace.usual();
			return segments.isEmpty() ? Stream.empty()
					: Stream.of(new Measure(points, pace.measured(),
							Math.toIntExact(Math.max(0, Math.min(seconds, LONGEST))),
							plan.plan().rules().team().marking(points)));
		}).toList();
	}

	/**
	 * Let the plan take what was measured. It is taken back like any change of the plan.
	 * @param points for points judging, else for placement judging
	 * @throws RuleViolationException {@code timetable-not-measured} where too few were
	 * measured
	 * @throws ConflictException {@code stale-version} where somebody else changed the
	 * plan since
	 */
	@Transactional
	public PlanView take(CompetitionId id, int seen, boolean points, Actor actor) {
		Measure measure = of(id).stream()
			.filter((one) -> one.points() == points && one.counts())
			.findFirst()
			.orElseThrow(
					() -> new RuleViolationException("timetable-not-measured", Sentence.of("timetable.not-measured")));
		return this.timetables.measured(id, seen, measure, actor);
	}

	/**
	 * What was measured in one way of judging.
	 *
	 * @param teams with how many teams
	 * @param seconds until all cards were closed; as published where too few were
	 * measured
	 * @param planned what the plan has now
	 */
	public record Measure(boolean points, int teams, int seconds, int planned) {

		/** Tell whether enough were measured. */
		public boolean counts() {
			return this.teams >= Pace.LEAST;
		}

		/** Tell whether it is otherwise than planned. */
		public boolean isNews() {
			return counts() && this.seconds != this.planned;
		}

	}

}
