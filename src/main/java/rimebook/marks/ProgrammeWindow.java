package rimebook.marks;

/**
 * How long a programme may be; both ends belong to it.
 *
 * @param seconds the length asked for
 * @param tolerance how many seconds longer or shorter it may be
 */
public record ProgrammeWindow(int seconds, int tolerance) {

	/** The fewest seconds. */
	public int least() {
		return Math.max(0, this.seconds - this.tolerance);
	}

	/** The most seconds. */
	public int most() {
		return this.seconds + this.tolerance;
	}

	/** By how many seconds a time is too short; 0 for one that is not. */
	public int lacking(int skated) {
		return Math.max(0, least() - skated);
	}

	/** By how many seconds a time is too long; 0 for one that is not. */
	public int over(int skated) {
		return Math.max(0, skated - most());
	}

}
