package rimebook.results;

/** Why a new version was published. */
public enum Cause {

	/** The cards of a further team were closed. */
	CARDS_CLOSED,
	/** A team withdrew, did not finish or was disqualified. */
	STATUS,
	/** Other cards count than before: a substitute took over, or gave back, a seat. */
	PANEL,
	/** Two officials corrected a closed card, or how a team came through. */
	CORRECTED,
	/** The segment was posted and the protest clock started. */
	POSTED,
	/** Referee and accountant signed. */
	SIGNED,
	/** The referee opened an official result again. */
	REOPENED,
	/** A segment of the event was cancelled, or brought back. */
	CANCELLED;

	/**
	 * How a note begins that tells of this; empty where notes have no beginning of their
	 * own.
	 */
	String lead() {
		return switch (this) {
			case CORRECTED -> "Corrected: ";
			case REOPENED -> "Opened again: ";
			default -> "";
		};
	}

}
