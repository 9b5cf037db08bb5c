package rimebook.tabulation;

/**
 * How a team came through a segment or an event; in the order in which teams without a
 * place are listed.
 */
public enum EntryStatus {

	/** Skated and marked: has a card of each judge and gets a place. */
	SKATED("skated"),

	/** Began and could not complete the programme: no marks, no place. */
	NOT_FINISHED("not finished"),

	/** Did not start: no marks, no place. */
	WITHDRAWN("withdrawn"),

	/** Removed by the referee, before or after being marked: no place. */
	DISQUALIFIED("disqualified");

	private final String words;

	EntryStatus(String words) {
		this.words = words;
	}

	String words() {
		return this.words;
	}

}
