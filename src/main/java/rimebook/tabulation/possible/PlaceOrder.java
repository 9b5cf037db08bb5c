package rimebook.tabulation.possible;

import java.util.stream.IntStream;

/**
 * Turns keys into places, over and over again. The order of last time is where sorting
 * begins, since little changes from one time to the next.
 */
final class PlaceOrder {

	private final long[] keys;

	private final int[] order;

	private final int[] places;

	PlaceOrder(int size) {
		this.keys = new long[size];
		this.order = IntStream.range(0, size).toArray();
		this.places = new int[size];
	}

	void key(int team, long key) {
		this.keys[team] = key;
	}

	/** Work out the places from the keys. */
	void sort() {
		for (int i = 1; i < this.order.length; i++) {
			insert(i);
		}
		for (int i = 0; i < this.order.length; i++) {
			boolean level = i > 0 && this.keys[this.order[i]] == this.keys[this.order[i - 1]];
			this.places[this.order[i]] = level ? this.places[this.order[i - 1]] : i + 1;
		}
	}

	private void insert(int index) {
		int team = this.order[index];
		int i = index;
		while (i > 0 && this.keys[this.order[i - 1]] > this.keys[team]) {
			this.order[i] = this.order[i - 1];
			i--;
		}
		this.order[i] = team;
	}

	int place(int team) {
		return this.places[team];
	}

	/** Whether another team has the same place. */
	boolean isShared(int team) {
		int same = 0;
		for (int place : this.places) {
			same += (place == this.places[team]) ? 1 : 0;
		}
		return same > 1;
	}

}
