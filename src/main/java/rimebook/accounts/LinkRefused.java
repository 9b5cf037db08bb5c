package rimebook.accounts;

/**
 * The token of a personal link opens nothing. Expected every day, so it is checked and
 * has no trace.
 */
public final class LinkRefused extends Exception {

	private static final long serialVersionUID = 1L;

	private final LinkStanding standing;

	LinkRefused(LinkStanding standing) {
		super(standing.name(), null, false, false);
		this.standing = standing;
	}

	/** Why. */
	public LinkStanding standing() {
		return this.standing;
	}

}
