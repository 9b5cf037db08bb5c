package rimebook.draw;

import rimebook.entries.EntryId;

/**
 * One line of a starting order.
 *
 * @param number the starting number, 1 first; never shifted, whoever withdraws
 * @param group the warm-up group, 1 first
 * @param entry who starts; ask {@code entries} whether it has withdrawn since
 * @param ticket the SHA-256 digest that decided, in hexadecimal digits
 * @param digested the text it is the digest of, with the names as they were in the draw
 */
public record StartView(int number, int group, EntryId entry, String ticket, String digested) {

	/** The shell command that repeats the ticket. */
	public String command() {
		return new DrawTicket(this.digested).command();
	}

}
