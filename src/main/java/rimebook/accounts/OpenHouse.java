package rimebook.accounts;

import java.util.List;

/**
 * Shows on the sign-in page how anybody can come in. Only the demonstration has such a
 * bean; everywhere else the page shows nothing.
 */
public interface OpenHouse {

	/** What is offered now, in the order of the page. */
	List<Offer> offers();

	/**
	 * One way in.
	 *
	 * @param what who or what comes in this way, such as "Referee" or "Judge 3, Junior"
	 * @param signInName the name to type; empty for a seat
	 * @param secret the password, or the seat's code
	 * @param link where a link leads that opens without either, within the application;
	 * empty for none
	 */
	record Offer(String what, String signInName, String secret, String link) {

		public Offer(String what, String signInName, String secret) {
			this(what, signInName, secret, "");
		}

	}

}
