package rimebook.live;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryView;

/**
 * All that is public of a team in an event.
 *
 * @param facts the event
 * @param skates the event's segments, in order
 * @param whole its row in the event's standing, {@code null} before it has one
 */
record TeamFacts(EventFacts facts, EntryView entry, List<Skate> skates, StandingTable.@Nullable Line whole) {

	TeamFacts {
		skates = List.copyOf(skates);
	}

	/** Read what an event has of an entry. */
	static TeamFacts of(EventFacts facts, EntryView entry) {
		String id = entry.id().toString();
		return new TeamFacts(facts, entry, facts.segments().stream().map((segment) -> Skate.of(segment, id)).toList(),
				line(facts.table(), id));
	}

	private static StandingTable.@Nullable Line line(@Nullable StandingTable table, String entry) {
		return (table == null) ? null
				: table.lines().stream().filter((line) -> line.row().entry().equals(entry)).findFirst().orElse(null);
	}

	/** The entry's identity. */
	public String id() {
		return this.entry.id().toString();
	}

	public String name() {
		return this.entry.team().name();
	}

	public String club() {
		return this.entry.team().club().name();
	}

	/** Tell whether it has left the event. */
	public boolean isGone() {
		return !this.entry.isEntered();
	}

	/**
	 * One segment.
	 *
	 * @param start where it stands in the starting order, {@code null} before the draw
	 * @param table the segment's newest standing, {@code null} before the first
	 * @param line its row there, {@code null} before it has one
	 */
	record Skate(SegmentFacts facts, @Nullable Start start, @Nullable StandingTable table,
			StandingTable.@Nullable Line line) {

		static Skate of(SegmentFacts facts, String entry) {
			Start start = facts.starts().stream().filter((one) -> one.entry().equals(entry)).findFirst().orElse(null);
			StandingTable table = facts.table();
			return new Skate(facts, start, table, TeamFacts.line(table, entry));
		}

	}

}
