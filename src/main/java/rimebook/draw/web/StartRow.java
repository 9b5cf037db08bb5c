package rimebook.draw.web;

import rimebook.draw.DrawTicket;
import rimebook.draw.StartingOrderView;
import rimebook.entries.EntryState;
import rimebook.entries.EntryView;

/**
 * One line of a starting order as people read it.
 *
 * @param team the name as it is now
 * @param added whether it came after the draw, so that its ticket decided nothing
 */
record StartRow(int number, int group, String team, String club, Ticket ticket, boolean added, boolean withdrawn) {

	static StartRow of(StartingOrderView.Start start, EntryView entry, String seed, String segment, boolean added) {
		String team = entry.team().name();
		String club = entry.team().club().name();
		boolean renamed = !DrawTicket.textOf(seed, segment, team, club).equals(start.digested());
		return new StartRow(start.number(), start.group(), team, club,
				new Ticket(start.ticket(), start.digested(), renamed), added, entry.state() == EntryState.WITHDRAWN);
	}

	/**
	 * What decided the place.
	 *
	 * @param digest the SHA-256 digest, in hexadecimal digits
	 * @param digested the text of it, with the names as they were in the draw
	 * @param renamed whether a name was changed since, so that the text is to be shown
	 */
	record Ticket(String digest, String digested, boolean renamed) {

		private static final int SHORT = 12;

		/** The beginning of the digest; enough to tell a field of any size apart. */
		public String beginning() {
			return this.digest.substring(0, SHORT);
		}

	}

}
