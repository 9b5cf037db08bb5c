package rimebook.review;

import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * Every two teams, by whether a judge has them in the order of the other judges. Of the
 * teams A, B, C a judge who has B before A = C where the others have A, B, C has one pair
 * in the same order (B, C), one the other way round (A, B) and one level (A, C).
 *
 * @param same in the same order
 * @param reversed the other way round
 * @param judgeLevel level for the judge alone
 * @param othersLevel level for the others alone
 * @param bothLevel level for both
 */
public record Pairs(int same, int reversed, int judgeLevel, int othersLevel, int bothLevel) {

	/** No two teams. */
	static final Pairs NONE = new Pairs(0, 0, 0, 0, 0);

	/**
	 * Count.
	 * @param judge what the judge gave each team
	 * @param others what the others gave the same teams
	 */
	static <T extends Comparable<T>> Pairs of(List<T> judge, List<T> others) {
		Pairs pairs = NONE;
		for (int i = 1; i < judge.size(); i++) {
			for (int j = 0; j < i; j++) {
				pairs = pairs.plus(of(judge.get(i).compareTo(judge.get(j)), others.get(i).compareTo(others.get(j))));
			}
		}
		return pairs;
	}

	private static Pairs of(int judge, int others) {
		if (judge == 0 || others == 0) {
			return (others != 0) ? new Pairs(0, 0, 1, 0, 0)
					: ((judge != 0) ? new Pairs(0, 0, 0, 1, 0) : new Pairs(0, 0, 0, 0, 1));
		}
		return (judge > 0 == others > 0) ? new Pairs(1, 0, 0, 0, 0) : new Pairs(0, 1, 0, 0, 0);
	}

	/** These and those of another segment: no pair is of two segments. */
	Pairs plus(Pairs more) {
		return new Pairs(this.same + more.same, this.reversed + more.reversed, this.judgeLevel + more.judgeLevel,
				this.othersLevel + more.othersLevel, this.bothLevel + more.bothLevel);
	}

	/** How many pairs there are. */
	public int all() {
		return this.same + this.reversed + level();
	}

	/** How many are level for the judge, the others or both. */
	public int level() {
		return this.judgeLevel + this.othersLevel + this.bothLevel;
	}

	/**
	 * Kendall's tau-b: same less reversed, over the geometric mean of the pairs that are
	 * not level for the judge and of those that are not for the others; {@code null}
	 * where every pair is level for one of them.
	 */
	@Nullable Double tau() {
		long ordered = (long) this.same + this.reversed;
		double both = Math.sqrt(ordered + this.othersLevel) * Math.sqrt(ordered + this.judgeLevel);
		return (both > 0) ? (this.same - this.reversed) / both : null;
	}

}
