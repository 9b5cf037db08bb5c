package rimebook.draw.web;

import rimebook.draw.DrawTicket;
import rimebook.draw.StartView;
import rimebook.entries.EntryState;
import rimebook.entries.EntryView;

/** One line of a starting order as people read it. */
record StartRow(int number, int group, String team, String club, String ticket, boolean withdrawn) {

	private static final int SHORT = 12;

	static StartRow of(StartView start, EntryView entry) {
		return new StartRow(start.number(), start.group(), entry.team().name(), entry.team().club().name(),
				start.ticket(), entry.state() == EntryState.WITHDRAWN);
	}

	/** The beginning of the ticket; enough to tell a field of any size apart. */
	public String shortTicket() {
		return this.ticket.substring(0, SHORT);
	}

	/** The shell command that repeats the ticket. */
	String command(String seed, String segment) {
		String text = DrawTicket.of(seed, segment, this.team, this.club).text();
		return "printf '%s' '" + text.replace("'", "'\\''") + "' | sha256sum";
	}

}
