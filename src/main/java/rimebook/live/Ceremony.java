package rimebook.live;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import rimebook.published.Standing;

/**
 * The first places of an event for the big screen, from the third to the first. There is
 * none before the last result is posted: until then a place could still be corrected
 * without anybody hearing why.
 *
 * @param steps who is called up, one place after the other; teams that share a place
 * together
 */
record Ceremony(List<Step> steps) {

	private static final int PLACES = 3;

	Ceremony {
		steps = List.copyOf(steps);
	}

	/** What there is to reveal of an event; nothing before it is published. */
	static Ceremony of(EventFacts facts) {
		StandingTable table = facts.table();
		if (table == null || facts.event().isCancelled() || !(facts.isOfficial() || isPosted(facts))) {
			return new Ceremony(List.of());
		}
		List<Step> steps = new ArrayList<>();
		for (int place = PLACES; place > 0; place--) {
			int own = place;
			List<StandingTable.Line> lines = table.lines()
				.stream()
				.filter((line) -> Objects.equals(line.row().place(), own))
				.toList();
			if (!lines.isEmpty()) {
				steps.add(new Step(place, lines));
			}
		}
		return new Ceremony(steps);
	}

	private static boolean isPosted(EventFacts facts) {
		return facts.segments()
			.stream()
			.filter((segment) -> segment.cancelled().isEmpty())
			.max(Comparator.comparing(SegmentFacts::position))
			.filter((last) -> last.phase() == SegmentFacts.Phase.POSTED || last.phase() == SegmentFacts.Phase.OFFICIAL)
			.isPresent();
	}

	/**
	 * A place.
	 *
	 * @param place 1 for the winners
	 */
	record Step(int place, List<StandingTable.Line> lines) {

		public List<Standing.Row> rows() {
			return this.lines.stream().map(StandingTable.Line::row).toList();
		}

	}

}
