package rimebook.draw.web;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;

import rimebook.draw.StartingOrderView;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;

/** A drawn order with the names and times that people read. */
record OrderPage(int number, StartingOrderView.Procedure how, Act act, List<StartGroup> groups, String command) {

	static OrderPage of(StartingOrderView order, String segment, Map<EntryId, EntryView> entries, ZoneId zone) {
		List<StartRow> rows = order.starts()
			.stream()
			.map((start) -> StartRow.of(start, Objects.requireNonNull(entries.get(start.entry())), order.seed(),
					segment, order.isAdded(start.number())))
			.toList();
		return new OrderPage(order.number(), order.how(),
				new Act(order.act().drawnAt().atZone(zone), order.act().drawnBy(), order.act().reason()), groups(rows),
				order.starts().get(0).command());
	}

	private static List<StartGroup> groups(Collection<StartRow> rows) {
		return rows.stream()
			.collect(Collectors.groupingBy(StartRow::group, TreeMap::new, Collectors.toList()))
			.entrySet()
			.stream()
			.map((group) -> new StartGroup(group.getKey(), group.getValue()))
			.toList();
	}

	/** The whole order in one line, for the list of earlier draws. */
	public String inOneLine() {
		return this.groups.stream()
			.flatMap((group) -> group.rows().stream())
			.map((row) -> row.number() + " " + row.team())
			.collect(Collectors.joining(", "));
	}

	/** When, by whom and why it was drawn, in the rink's time. */
	record Act(ZonedDateTime drawnAt, String drawnBy, String reason) {
	}

}
