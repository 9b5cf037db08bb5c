package rimebook.tabulation;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A team and its measures in the order in which they are compared; for the judging
 * methods of this module.
 *
 * @param entry identifier
 * @param measures over the same criteria as every team's it is compared with, up to their
 * first difference
 */
public record Contender(String entry, List<Measure> measures) {

	/** Better figures first; equal ones by identifier, whatever order they came in. */
	static final Comparator<Contender> ORDER = Comparator.comparing(Contender::sortingKey, Contender::compare)
		.thenComparing(Contender::entry);

	private List<Measure> sortingKey() {
		return this.measures;
	}

	static int compare(List<Measure> left, List<Measure> right) {
		return firstDifference(left, right).map((i) -> left.get(i).compareTo(right.get(i))).orElse(0);
	}

	boolean isLevelWith(Contender other) {
		return this.measures.equals(other.measures);
	}

	/** Return where the first difference lies; there must be one. */
	int firstDifference(Contender other) {
		return firstDifference(this.measures, other.measures).orElseThrow();
	}

	/** Both lists run over the same criteria up to their first difference. */
	private static Optional<Integer> firstDifference(List<Measure> left, List<Measure> right) {
		for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
			if (!left.get(i).equals(right.get(i))) {
				return Optional.of(i);
			}
		}
		return Optional.empty();
	}

}
