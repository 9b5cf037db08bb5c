package rimebook.draw.web;

import rimebook.draw.DrawTicket;
import rimebook.draw.StartingOrderView;
import rimebook.entries.EntryState;
import rimebook.entries.EntryView;

/**
 * One line of a starting order as people read it.
 *
 * @param team the name as it is now
 * @param digested the text of the ticket, with the names as they were in the draw
 * @param renamed whether a name was changed since, so that the text is to be shown
 */
record StartRow(int number, int group, String team, String club, String ticket, String digested, boolean renamed,
		boolean withdrawn) {

	private static final int SHORT = 12;

	static StartRow of(StartingOrderView.Start start, EntryView entry, String seed, String segment) {
		String team = entry.team().name();
		String club = entry.team().club().name();
		boolean renamed = !DrawTicket.textOf(seed, segment, team, club).equals(start.digested());
		return new StartRow(start.number(), start.group(), team, club, start.ticket(), start.digested(), renamed,
				entry.state() == EntryState.WITHDRAWN);
	}

	/** The beginning of the ticket; enough to tell a field of any size apart. */
	public String shortTicket() {
		return this.ticket.substring(0, SHORT);
	}

}
