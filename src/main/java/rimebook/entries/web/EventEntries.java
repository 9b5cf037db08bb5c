package rimebook.entries.web;

import java.util.List;

import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.entries.EntryView;

/** How many teams an event has. */
record EventEntries(EventId id, String name, long entered, long withdrawn) {

	static EventEntries of(EventView event, List<EntryView> entries) {
		long entered = entries.stream().filter(EntryView::isEntered).count();
		return new EventEntries(event.id(), event.name(), entered, entries.size() - entered);
	}

}
