package rimebook.tabulation;

import java.util.List;

/** The figures that made a place in a segment. */
public sealed interface Figures {

	/**
	 * Return the figures in the order in which they are compared.
	 * @return the first difference between two teams decides, none means a shared place
	 */
	List<Measure> measures();

	/**
	 * The figures of the majority system. Ordinals {@code 1 4 4 2 2} have majority place
	 * 2, size 3, total of majority 5, total 13.
	 *
	 * @param majorityPlace lowest place for which a majority of judges stands, hundredths
	 * @param size number of judges at that place or better
	 * @param totalOfMajority sum of their ordinals, hundredths
	 * @param totalOrdinals sum of all ordinals, hundredths
	 */
	record MajorityFigures(int majorityPlace, int size, int totalOfMajority, int totalOrdinals) implements Figures {

		/**
		 * Work out the figures of one team. The majority is {@code floor(n / 2) + 1}
		 * judges, so the majority place is that one of the ordinals in ascending order.
		 * @param ordinals of each judge, hundredths
		 */
		static MajorityFigures of(List<Integer> ordinals) {
			int majority = ordinals.stream().sorted().skip(ordinals.size() / 2).findFirst().orElseThrow();
			List<Integer> inMajority = ordinals.stream().filter((ordinal) -> ordinal <= majority).toList();
			return new MajorityFigures(majority, inMajority.size(), sum(inMajority), sum(ordinals));
		}

		private static int sum(List<Integer> ordinals) {
			return ordinals.stream().mapToInt(Integer::intValue).sum();
		}

		/**
		 * Return the sorting key: majority place, then greater size, then lower total of
		 * the majority, then lower total.
		 */
		@Override
		public List<Measure> measures() {
			return List.of(new Measure(Criterion.MAJORITY_PLACE, this.majorityPlace),
					new Measure(Criterion.SIZE_OF_MAJORITY, this.size),
					new Measure(Criterion.TOTAL_OF_MAJORITY, this.totalOfMajority),
					new Measure(Criterion.TOTAL_ORDINALS, this.totalOrdinals));
		}

	}

	/**
	 * The figures of the one-by-one system.
	 *
	 * @param wins comparisons won, hundredths since a rule set may give half a win
	 * @param judgesInFavour judges in favour over all comparisons
	 */
	record OneByOneFigures(int wins, int judgesInFavour) implements Figures {

		/** Return the sorting key: more wins, then more judges in favour. */
		@Override
		public List<Measure> measures() {
			return List.of(new Measure(Criterion.WINS, this.wins),
					new Measure(Criterion.JUDGES_IN_FAVOUR, this.judgesInFavour));
		}

	}

	/**
	 * The value of one criterion for one team.
	 *
	 * @param criterion what is measured
	 * @param value how much, in the unit of the criterion
	 */
	record Measure(Criterion criterion, int value) implements Comparable<Measure> {

		/** The better value sorts first; both must be of one criterion. */
		@Override
		public int compareTo(Measure other) {
			int ascending = Integer.compare(this.value, other.value);
			return this.criterion.higherIsBetter() ? -ascending : ascending;
		}

	}

}
