package rimebook.stand;

import java.util.List;
import java.util.function.Predicate;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;

/** The segments of every running competition, to choose from. */
@Component
public class RunningSegments {

	private final Competitions competitions;

	private final SegmentRun run;

	RunningSegments(Competitions competitions, SegmentRun run) {
		this.competitions = competitions;
		this.run = run;
	}

	/** All segments of the running competitions. */
	public List<Day> days() {
		return days((event) -> true);
	}

	/** The segments judged by points. */
	public List<Day> daysByPoints() {
		return days(EventView::hasTechnicalPanel).stream().filter((day) -> !day.segments().isEmpty()).toList();
	}

	private List<Day> days(Predicate<EventView> wanted) {
		return this.competitions.all()
			.stream()
			.filter((competition) -> competition.state() == CompetitionState.RUNNING)
			.map((competition) -> day(competition, wanted))
			.toList();
	}

	private Day day(CompetitionView competition, Predicate<EventView> wanted) {
		return new Day(competition.name(),
				this.competitions.events(competition.id())
					.stream()
					.filter(wanted)
					.flatMap((event) -> event.segments().stream().map((segment) -> line(event, segment)))
					.toList());
	}

	private Line line(EventView event, SegmentView segment) {
		List<PerformanceView> all = this.run.performances(segment.id());
		int done = (int) all.stream().filter((performance) -> performance.status().isDone()).count();
		int onIce = all.stream()
			.filter((performance) -> performance.status() == PerformanceStatus.ON_ICE)
			.mapToInt(PerformanceView::startNumber)
			.findFirst()
			.orElse(0);
		return new Line(segment.id(), event.name(), segment.name(),
				new RunningSegments.Line.Progress(all.size(), done, onIce), event.isCancelled(segment.id()));
	}

	/** A running competition. */
	public record Day(String competition, List<Line> segments) {
	}

	/**
	 * One segment.
	 *
	 * @param progress how far it has come
	 * @param cancelled whether it does not take place
	 */
	public record Line(SegmentId id, String event, String name, Progress progress, boolean cancelled) {

		/** The last part of the message key of its state. */
		public String state() {
			if (this.cancelled) {
				return "cancelled";
			}
			if (this.progress.starters() == 0) {
				return "not-open";
			}
			if (this.progress.onIce() > 0) {
				return "on-ice";
			}
			return (this.progress.done() == this.progress.starters()) ? "finished" : "open";
		}

		/**
		 * How far a segment has come.
		 *
		 * @param starters how many performances it has, 0 before it is opened
		 * @param onIce the starting number on the ice, 0 for none
		 */
		public record Progress(int starters, int done, int onIce) {
		}

	}

}
