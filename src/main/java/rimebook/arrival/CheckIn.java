package rimebook.arrival;

import java.time.Instant;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryView;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.RosterView;
import rimebook.wording.Sentence;

/**
 * What is known of a team at the door.
 *
 * @param people everybody on its roster now
 * @param withoutMusic the segments for which there is no music, where music is kept here
 * @param withoutPlan the segments for which elements are called and none were planned
 * @param otherwise what of its plans is otherwise than asked, which stops nobody
 * @param emergency whether somebody is known who is called in an emergency
 */
public record CheckIn(EntryView entry, EventView event, List<Person> people, List<SegmentView> withoutMusic,
		List<SegmentView> withoutPlan, List<Sentence> otherwise, boolean emergency) {

	public CheckIn {
		people = List.copyOf(people);
		withoutMusic = List.copyOf(withoutMusic);
		withoutPlan = List.copyOf(withoutPlan);
		otherwise = List.copyOf(otherwise);
	}

	/** How many are here, whether they skate or stand by. */
	public long here() {
		return this.people.stream().filter(Person::isHere).count();
	}

	/** Those who are to skate and are not here. */
	public List<Person> missing() {
		return this.people.stream()
			.filter((person) -> person.place().role() == PlaceRole.SKATES && !person.isHere())
			.toList();
	}

	/** Tell whether the team has a roster and everybody who is to skate is here. */
	public boolean isPresent() {
		return !this.people.isEmpty() && missing().isEmpty();
	}

	/** Tell whether nothing is left to do for the team. */
	public boolean isDone() {
		return isPresent() && this.withoutMusic.isEmpty() && this.withoutPlan.isEmpty() && this.emergency;
	}

	/**
	 * Somebody on the roster.
	 *
	 * @param seen by whom and when they were seen, {@code null} while they were not
	 */
	public record Person(RosterView.Place place, @Nullable Seen seen) {

		/** Tell whether they are here. */
		public boolean isHere() {
			return this.seen != null;
		}

	}

	/** Who noted something, and when. */
	public record Seen(String by, Instant at) {
	}

}
