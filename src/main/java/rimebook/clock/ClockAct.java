package rimebook.clock;

/** What the referee does with the clock of a performance. */
public enum ClockAct {

	/** The first skater moves: the time of the programme begins. */
	START("started"),

	/** The team has come to its complete stop: the time ends. */
	STOP("stopped"),

	/**
	 * The referee's signal to break off; the time stands still. While it does, the cause
	 * is another than was thought.
	 */
	INTERRUPT("interrupted"),

	/** The team goes on from the point of interruption; the time runs on. */
	RESUME("resumed"),

	/** The programme is skated again from its beginning; the time starts anew. */
	RESKATE("re-skate"),

	/** The newest act that counts was a slip and counts no longer. */
	TAKE_BACK("taken back");

	private final String words;

	ClockAct(String words) {
		this.words = words;
	}

	/** In a word or two, for the record. */
	String words() {
		return this.words;
	}

}
