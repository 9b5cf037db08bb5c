package rimebook.draw;

/** How a starting order comes about. */
public enum DrawMethod {

	/**
	 * Everybody in one draw: the first segment always, a later one where the rules want
	 * its order drawn afresh.
	 */
	WHOLE_FIELD(false),

	/**
	 * Warm-up groups cut from the standing, the best group last; inside a group the
	 * tickets decide.
	 */
	GROUPS_FROM_STANDING(true),

	/**
	 * The plain reverse of the standing, best last; the tickets decide only between equal
	 * places.
	 */
	REVERSE_STANDING(true);

	private final boolean fromStanding;

	DrawMethod(boolean fromStanding) {
		this.fromStanding = fromStanding;
	}

	/** Tell whether places of the earlier segments decide, not the tickets alone. */
	public boolean isFromStanding() {
		return this.fromStanding;
	}

}
