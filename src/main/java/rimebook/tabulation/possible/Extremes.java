package rimebook.tabulation.possible;

import java.util.Arrays;

/** The best and the worst place of each of several teams that came up. */
final class Extremes {

	private final int[] best;

	private final int[] worst;

	Extremes(int size) {
		this.best = new int[size];
		this.worst = new int[size];
		Arrays.fill(this.best, Integer.MAX_VALUE);
	}

	void note(int index, int place) {
		note(index, place, place);
	}

	void note(int index, int better, int worse) {
		this.best[index] = Math.min(this.best[index], better);
		this.worst[index] = Math.max(this.worst[index], worse);
	}

	/** {@link Integer#MAX_VALUE} where nothing came up. */
	int best(int index) {
		return this.best[index];
	}

	/** 0 where nothing came up. */
	int worst(int index) {
		return this.worst[index];
	}

}
