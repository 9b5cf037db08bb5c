package rimebook.live;

import java.util.Comparator;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;

/**
 * What the big screen shows.
 *
 * @param event the event that is on
 * @param facts the segment that is on
 * @param last the team that skated last, {@code null} before the first
 * @param leader the team in first place, {@code null} before anybody has a place
 * @param second the team behind it, {@code null} for none
 */
record BoardView(EventView event, SegmentFacts facts, StandingTable.@Nullable Line last,
		StandingTable.@Nullable Line leader, StandingTable.@Nullable Line second) {

	static BoardView of(EventView event, SegmentFacts facts) {
		List<StandingTable.Line> lines = (facts.version() != null) ? StandingTable.of(facts.version()).lines()
				: List.of();
		List<StandingTable.Line> placed = lines.stream().filter((line) -> line.row().place() != null).toList();
		return new BoardView(event, facts, lastOf(lines), at(placed, 0), at(placed, 1));
	}

	private static StandingTable.@Nullable Line lastOf(List<StandingTable.Line> lines) {
		return lines.stream()
			.filter((line) -> !line.row().status().equals("WITHDRAWN"))
			.max(Comparator.comparingInt((line) -> line.row().startNumber()))
			.orElse(null);
	}

	private static StandingTable.@Nullable Line at(List<StandingTable.Line> lines, int index) {
		return (index < lines.size()) ? lines.get(index) : null;
	}

}
