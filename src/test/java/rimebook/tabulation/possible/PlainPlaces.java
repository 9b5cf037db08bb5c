package rimebook.tabulation.possible;

import java.util.Arrays;

import rimebook.tabulation.PlacementRules;

/**
 * Places worked out straight from the definitions, fast enough for millions of panels;
 * the tests compare it with the tabulation.
 */
final class PlainPlaces {

	private PlainPlaces() {
	}

	/** Return the places, given for each judge numbers that fall from the best team. */
	static int[] of(PlacementRules rules, int[][] ranks) {
		int teams = ranks[0].length;
		long[] keys = new long[teams];
		for (int team = 0; team < teams; team++) {
			keys[team] = (rules.method() == PlacementRules.PlacementMethod.MAJORITY) ? majority(rules, ranks, team)
					: oneByOne(rules, ranks, team);
		}
		return places(keys);
	}

	static int[] places(long[] keys) {
		int[] places = new int[keys.length];
		for (int team = 0; team < keys.length; team++) {
			for (long other : keys) {
				places[team] += (other < keys[team]) ? 1 : 0;
			}
			places[team]++;
		}
		return places;
	}

	private static long majority(PlacementRules rules, int[][] ranks, int team) {
		int[] ordinals = new int[ranks.length];
		for (int judge = 0; judge < ranks.length; judge++) {
			int better = 0;
			int level = 0;
			for (int other : ranks[judge]) {
				better += (other > ranks[judge][team]) ? 1 : 0;
				level += (other == ranks[judge][team]) ? 1 : 0;
			}
			ordinals[judge] = 2 * better + 2
					+ ((rules.sharedOrdinals() == PlacementRules.SharedOrdinals.MEAN) ? level - 1 : 0);
		}
		Arrays.sort(ordinals);
		int place = ordinals[ordinals.length / 2];
		long inMajority = Arrays.stream(ordinals).filter((ordinal) -> ordinal <= place).count();
		long total = Arrays.stream(ordinals).filter((ordinal) -> ordinal <= place).sum();
		return ((place * 100L + 99 - inMajority) * 10_000 + total) * 10_000 + Arrays.stream(ordinals).sum();
	}

	private static long oneByOne(PlacementRules rules, int[][] ranks, int team) {
		int credit = (rules.equalJudgesInFavour() == PlacementRules.EqualJudgesInFavour.BOTH_WIN) ? 2
				: (rules.equalJudgesInFavour() == PlacementRules.EqualJudgesInFavour.HALF_EACH) ? 1 : 0;
		long wins = 0;
		long inFavour = 0;
		for (int rival = 0; rival < ranks[0].length; rival++) {
			int own = 0;
			int theirs = 0;
			for (int[] judge : ranks) {
				own += (judge[team] >= judge[rival]) ? 1 : 0;
				theirs += (judge[rival] >= judge[team]) ? 1 : 0;
			}
			if (rival != team) {
				wins += (own == theirs) ? credit : (own > theirs) ? 2 : 0;
				inFavour += own;
			}
		}
		return -wins * 10_000 - inFavour;
	}

}
