package rimebook.accounts;

/** How a personal link stands. */
public enum LinkStanding {

	/** It opens its page. */
	GOOD,

	/** Nobody was ever given it, or a newer one took its place. */
	UNKNOWN,

	/** Somebody at the desk shut it. */
	REVOKED,

	/** The competition is over. */
	EXPIRED

}
