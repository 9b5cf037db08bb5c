package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

/**
 * Performances made from a seed, with the published rules: judges who agree more or less,
 * some marks absent, few different codes so that equal totals come up.
 */
final class RandomPerformances {

	private static final List<String> CODES = List.of("ME4", "ME4<", "PB3", "I4+pi3", "AC2", "SySp2");

	private final Random random;

	RandomPerformances(Random random) {
		this.random = random;
	}

	List<Performance> next(int most, int judges) {
		return IntStream.range(0, 1 + this.random.nextInt(most)).mapToObj((i) -> next("E" + i, judges)).toList();
	}

	Performance next(String entry, int judges) {
		int elements = this.random.nextInt(4);
		return Performance.skated(entry,
				IntStream.rangeClosed(1, elements).mapToObj((i) -> element(i, judges)).toList(),
				PublishedRules.SHORT.components().stream().map((rule) -> component(rule.name(), judges)).toList(),
				this.random.nextInt(3) == 0 ? List.of(DeductionRule.Deduction.of("fall", new Points(100))) : List.of());
	}

	private JudgedElement element(int number, int judges) {
		return new JudgedElement(number, CODES.get(this.random.nextInt(CODES.size())),
				JudgedElement.ElementWorth.COUNTS, null, marks(judges, () -> this.random.nextInt(11) - 5));
	}

	private JudgedComponent component(String name, int judges) {
		return new JudgedComponent(name, marks(judges, () -> new Points(25 * (20 + this.random.nextInt(6)))));
	}

	/** One mark of ten is absent, never the first. */
	private <T> List<@Nullable T> marks(int judges, Supplier<T> mark) {
		List<@Nullable T> marks = new ArrayList<>();
		for (int judge = 0; judge < judges; judge++) {
			marks.add((judge > 0 && this.random.nextInt(10) == 0) ? null : mark.get());
		}
		return marks;
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
