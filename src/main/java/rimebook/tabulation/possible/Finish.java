package rimebook.tabulation.possible;

import java.util.stream.IntStream;

/**
 * How a team comes out of the segment, as a number that rises from the best: 1st alone,
 * 1st shared, 2nd alone, and so on.
 */
final class Finish {

	private Finish() {
	}

	static int of(int place, boolean shared) {
		return 2 * place + (shared ? 1 : 0);
	}

	static int place(int finish) {
		return finish / 2;
	}

	static boolean isShared(int finish) {
		return finish % 2 == 1;
	}

	/**
	 * Return every finish from one place to another; the last place of all cannot be
	 * shared.
	 */
	static int[] between(int best, int worst, int teams) {
		return IntStream.rangeClosed(of(best, false), of(worst, worst < teams)).toArray();
	}

	/** How many numbers there are with so many teams, counted from 0. */
	static int count(int teams) {
		return of(teams, true) + 1;
	}

}
