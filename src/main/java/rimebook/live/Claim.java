package rimebook.live;

import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;

/**
 * The published standing that people mean when they ask who leads while a segment is
 * shown: that of the event once an earlier segment counts, else that of the segment.
 *
 * @param inEvent whether it is the event's
 * @param version what was published of it
 */
record Claim(boolean inEvent, ResultVersion version) {

	/**
	 * Choose.
	 * @param shown the newest version of the segment that is shown
	 * @param whole the newest version of the event, {@code null} for none
	 */
	static Claim of(EventView event, SegmentFacts facts, ResultVersion shown, @Nullable ResultVersion whole) {
		boolean counts = event.isLastSegment(facts.segment().id()) || facts.phase().isRunning();
		boolean alone = event.held().segments().size() == 1;
		boolean later = !event.previousSegments(facts.segment().id()).isEmpty();
		return (whole != null && (alone || (later && counts))) ? new Claim(true, whole) : new Claim(false, shown);
	}

	Standing standing() {
		return this.version.standing();
	}

	boolean isOfficial() {
		return this.version.state() == ResultVersion.ResultState.OFFICIAL;
	}

	/** The teams with a place, in order. */
	List<Standing.Row> placed() {
		return standing().rows().stream().filter((row) -> row.place() != null).toList();
	}

	/** The team in front, or all of them where they share the place. */
	List<Standing.Row> leaders() {
		return sharing(0);
	}

	/** The team, or teams, behind those in front. */
	List<Standing.Row> followers() {
		return sharing(leaders().size());
	}

	private List<Standing.Row> sharing(int from) {
		List<Standing.Row> placed = placed();
		return (from < placed.size())
				? placed.stream().filter((row) -> Objects.equals(row.place(), placed.get(from).place())).toList()
				: List.of();
	}

	/** The key of words that differ between the event and one of its segments. */
	String key(String words) {
		return words + (this.inEvent ? ".event" : ".segment");
	}

	/**
	 * Tell whether what was published as needed is needed for this. In an event of one
	 * segment both are the same.
	 * @param ofEvent whether it is needed in the event, else in the segment
	 */
	boolean isMeantBy(boolean ofEvent) {
		return ofEvent == this.inEvent || (this.inEvent && standing().segments().size() == 1);
	}

}
