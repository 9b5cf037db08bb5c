package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Panels made from a seed: judges who follow the teams' true strength more or less, and
 * few different marks in half of them, so that equal cards and shared places are common.
 */
final class RandomPanels {

	private final Random random;

	RandomPanels(Random random) {
		this.random = random;
	}

	List<EntryCards> next(int mostEntries, int judges) {
		int entries = 1 + this.random.nextInt(mostEntries);
		int spread = this.random.nextBoolean() ? 2 : 15;
		return IntStream.range(0, entries)
			.mapToObj((i) -> EntryCards.skated("E" + i,
					IntStream.range(0, judges).mapToObj((judge) -> card(i, spread)).toList()))
			.toList();
	}

	private CardMarks card(int strength, int spread) {
		return new CardMarks(mark(strength, spread), mark(strength, spread));
	}

	private int mark(int strength, int spread) {
		return 10 * (30 + strength / 2 + this.random.nextInt(spread));
	}

	int index(int bound) {
		return this.random.nextInt(bound);
	}

	<T> List<T> shuffled(List<T> items) {
		List<T> copy = new ArrayList<>(items);
		Collections.shuffle(copy, this.random);
		return copy;
	}

}
