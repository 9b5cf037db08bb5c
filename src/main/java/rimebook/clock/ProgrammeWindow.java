package rimebook.clock;

import org.jspecify.annotations.Nullable;

/**
 * How long a programme may be; both ends belong to it.
 *
 * @param seconds the length asked for
 * @param longer how many seconds longer it may be
 * @param shorter how many seconds shorter it may be; {@code null} where only the longest
 * is limited
 */
public record ProgrammeWindow(int seconds, int longer, @Nullable Integer shorter) {

	/** The fewest seconds, 0 where only the longest is limited. */
	public int least() {
		return (this.shorter != null) ? Math.max(0, this.seconds - this.shorter) : 0;
	}

	/** The most seconds. */
	public int most() {
		return this.seconds + this.longer;
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
