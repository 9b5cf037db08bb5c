package rimebook.clock;

/** How the clock of a performance stands, and what can be done with it from there. */
public enum ClockState {

	/** No skater has moved yet, or not since a re-skate was ordered. */
	WAITING("waiting for the start"),

	/** The programme is being skated. */
	RUNNING("running"),

	/** Broken off at the referee's signal. */
	INTERRUPTED("interrupted"),

	/** The programme has ended. */
	STOPPED("stopped");

	private final String words;

	ClockState(String words) {
		this.words = words;
	}

	/**
	 * Tell whether an act is possible; whether one can be taken back is told elsewhere.
	 */
	public boolean allows(ClockAct act) {
		return switch (act) {
			case START -> this == WAITING;
			case STOP -> this == RUNNING;
			case INTERRUPT -> isUnderWay();
			case RESUME -> this == INTERRUPTED;
			case RESKATE -> this == INTERRUPTED || this == STOPPED;
			case TAKE_BACK -> true;
		};
	}

	/** Tell whether the team is in the middle of its programme. */
	public boolean isUnderWay() {
		return this == RUNNING || this == INTERRUPTED;
	}

	String words() {
		return this.words;
	}

}
