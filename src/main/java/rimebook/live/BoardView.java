package rimebook.live;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.results.ResultVersion;

/**
 * What the big screen shows.
 *
 * @param event the event that is on
 * @param facts the segment that is on
 * @param tidings the state of things
 * @param last the team that was marked last, {@code null} before the first
 * @param placed the teams that have a place in the segment, in order
 * @param inEvent the teams that have a place in the event, in order; empty in its first
 * segment, where the event is not ahead of it
 */
record BoardView(EventView event, SegmentFacts facts, Tidings tidings, StandingTable.@Nullable Line last,
		List<StandingTable.Line> placed, List<StandingTable.Line> inEvent) {

	/** More lines cannot be read from the stands. */
	private static final int MOST_LINES = 8;

	private static final int FEW_LINES = 4;

	BoardView {
		placed = List.copyOf(placed);
		inEvent = List.copyOf(inEvent);
	}

	/**
	 * Lay out a segment.
	 * @param tidings the state of things
	 * @param last the entry that was marked last
	 * @param combined the standing of the event, {@code null} for none to show
	 */
	static BoardView of(EventView event, SegmentFacts facts, Tidings tidings, @Nullable String last,
			@Nullable ResultVersion combined) {
		List<StandingTable.Line> lines = (facts.version() != null) ? StandingTable.of(facts.version()).lines()
				: List.of();
		List<StandingTable.Line> inEvent = (combined != null) ? StandingTable.of(combined).lines() : List.of();
		return new BoardView(event, facts, tidings,
				lines.stream().filter((line) -> line.row().entry().equals(last)).findFirst().orElse(null),
				placed(lines), placed(inEvent));
	}

	private static List<StandingTable.Line> placed(List<StandingTable.Line> lines) {
		return lines.stream().filter((line) -> line.row().place() != null).toList();
	}

	/** Tell whether everybody has skated, so that the result is what there is to see. */
	public boolean isOver() {
		return this.facts.onIce() == null && !this.facts.phase().isRunning();
	}

	/** The team in first place, {@code null} before anybody has a place. */
	public StandingTable.@Nullable Line leader() {
		return at(this.placed, 0);
	}

	/** The team behind the leader, {@code null} for none. */
	public StandingTable.@Nullable Line second() {
		return at(this.placed, 1);
	}

	/** The segment's places, sheet by sheet. */
	public List<Sheets.Sheet<StandingTable.Line>> sheets() {
		return Sheets.of(this.placed, MOST_LINES);
	}

	/** The same in a quarter of the screen, for when nobody is on the ice. */
	public List<Sheets.Sheet<StandingTable.Line>> smallSheets() {
		return Sheets.of(this.placed, FEW_LINES);
	}

	private static StandingTable.@Nullable Line at(List<StandingTable.Line> lines, int index) {
		return (index < lines.size()) ? lines.get(index) : null;
	}

}
