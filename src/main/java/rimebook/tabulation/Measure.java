package rimebook.tabulation;

/**
 * The value of one criterion for one team.
 *
 * @param criterion what is measured
 * @param value how much, in the unit of the criterion
 */
public record Measure(Criterion criterion, int value) implements Comparable<Measure> {

	/** The better value sorts first; both must be of one criterion. */
	@Override
	public int compareTo(Measure other) {
		int ascending = Integer.compare(this.value, other.value);
		return this.criterion.higherIsBetter() ? -ascending : ascending;
	}

}
