package rimebook.competition;

import java.util.Set;
import java.util.stream.Stream;

import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What is under way: the competitions in some states without what was cancelled. A crew
 * has few at a time, so that only the newest are looked at; those that were never brought
 * to their end do not pile up.
 */
@Service
@Transactional(readOnly = true)
public class UnderWay {

	/** How many competitions are looked at. */
	public static final int MOST = 5;

	private final CompetitionRepository newest;

	private final Competitions competitions;

	UnderWay(CompetitionRepository newest, Competitions competitions) {
		this.newest = newest;
		this.competitions = competitions;
	}

	/**
	 * The newest competitions that are in one of these states, {@value #MOST} at most.
	 */
	public Stream<CompetitionView> competitions(CompetitionState... states) {
		return this.newest.findByStateInOrderByIdDesc(Set.of(states), Limit.of(MOST)).stream().map(Competition::view);
	}

	/** Their events. */
	public Stream<DayEvent> events(CompetitionState... states) {
		return competitions(states).flatMap((competition) -> this.competitions.events(competition.id())
			.stream()
			.filter((event) -> !event.isCancelled())
			.map((event) -> new DayEvent(competition, event.held())));
	}

	/** Their segments. */
	public Stream<DaySegment> segments(CompetitionState... states) {
		return events(states).flatMap((event) -> event.event()
			.segments()
			.stream()
			.map((segment) -> new DaySegment(event.competition(), event.event(), segment)));
	}

	/** An event that takes place. */
	public record DayEvent(CompetitionView competition, EventView event) {
	}

	/** A segment that takes place. */
	public record DaySegment(CompetitionView competition, EventView event, SegmentView segment) {

		/** What it is called: "Junior, Free skating". */
		public String where() {
			return this.event.name() + ", " + this.segment.name();
		}

	}

}
