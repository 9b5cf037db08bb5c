package rimebook.timetable.plan;

import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * What a plan is laid out with: the segments and their teams, and who has to be where, as
 * the competition has them now.
 *
 * @param zone the rink's
 * @param segments those that take place, in the order of events and segments
 * @param people everybody who could be wanted in two places
 */
public record Programme(ZoneId zone, List<Segment> segments, List<Person> people) {

	public Programme {
		segments = List.copyOf(segments);
		people = List.copyOf(people);
	}

	/** The segments by their identity. */
	public Map<UUID, Segment> byId() {
		Map<UUID, Segment> all = new LinkedHashMap<>();
		this.segments.forEach((segment) -> all.put(segment.id(), segment));
		return all;
	}

	/**
	 * A segment that takes place.
	 *
	 * @param seconds how long a programme is
	 * @param points whether it is judged by points
	 * @param drawn whether its teams are in starting order; else they are in order of
	 * entry
	 * @param teams who starts, withdrawn teams of a drawn order among them
	 */
	public record Segment(UUID id, Named event, String name, int seconds, boolean points, boolean drawn,
			List<Team> teams) {

		public Segment {
			teams = List.copyOf(teams);
		}

		/** "Junior, Short programme". */
		public String where() {
			return this.event.name() + ", " + this.name;
		}

	}

	/**
	 * A team in a segment.
	 *
	 * @param number its starting number, 0 before the draw
	 * @param group its warm-up group, from 1
	 */
	public record Team(UUID entry, String name, String club, int number, int group) {
	}

	/** An event. */
	public record Named(UUID id, String name) {
	}

	/**
	 * Somebody on a panel, with the teams they coach.
	 *
	 * @param events on whose panels they sit
	 * @param coached the entries of teams they coach
	 */
	public record Person(String name, Set<UUID> events, Set<UUID> coached) {

		public Person {
			events = Set.copyOf(events);
			coached = Set.copyOf(coached);
		}

	}

}
