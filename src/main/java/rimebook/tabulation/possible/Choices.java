package rimebook.tabulation.possible;

import java.util.Arrays;

/**
 * The positions on a judge's card that need to be tried for the question how many rivals
 * end up ahead of a team. Against that team the block can only be better, level or worse;
 * of all positions that come to the same, the one that presses the rivals most (for the
 * fewest ahead) or least (for the most) is enough. One that does nothing but harm, or
 * spare, the team itself needs no trying either.
 */
final class Choices {

	private final JudgesCards cards;

	private final boolean feelsLevel;

	private final int team;

	private final int[] rivals;

	private final boolean fewest;

	private Choices(JudgesCards cards, boolean feelsLevel, int team, int[] rivals, boolean fewest) {
		this.cards = cards;
		this.feelsLevel = feelsLevel;
		this.team = team;
		this.rivals = rivals;
		this.fewest = fewest;
	}

	static int[][] all(JudgesCards cards) {
		int[][] all = new int[cards.judges()][];
		Arrays.setAll(all, cards::open);
		return all;
	}

	static int[][] enough(JudgesCards cards, RankKeys keys, int team, int[] rivals, boolean fewest) {
		Choices choices = new Choices(cards, keys.feelsLevelBlock(), team, rivals, fewest);
		int[][] enough = new int[cards.judges()][];
		Arrays.setAll(enough, choices::of);
		return enough;
	}

	private int[] of(int judge) {
		int own = this.cards.position(judge, this.team);
		int[] candidates = { pick(judge, 0, own - 1), pick(judge, own, own), pick(judge, own + 1, Integer.MAX_VALUE) };
		int[] enough = new int[candidates.length];
		int count = 0;
		for (int candidate : candidates) {
			if (candidate >= 0 && !isReplaced(judge, candidate, candidates)) {
				enough[count++] = candidate;
			}
		}
		return Arrays.copyOf(enough, count);
	}

	/** The highest position there for the fewest ahead, else the lowest; -1 for none. */
	private int pick(int judge, int from, int to) {
		int picked = -1;
		for (int position : this.cards.open(judge)) {
			if (position >= from && position <= to && (picked < 0 || !this.fewest)) {
				picked = position;
			}
		}
		return picked;
	}

	private boolean isReplaced(int judge, int position, int[] candidates) {
		for (int other : candidates) {
			if (other >= 0 && other != position && replaces(judge, other, position)) {
				return true;
			}
		}
		return false;
	}

	private boolean replaces(int judge, int better, int position) {
		boolean servesTeam = this.fewest == better > position;
		boolean sameForRivals = areRivalsAlike(judge, better, position);
		return servesTeam ? sameForRivals : !sameForRivals && isAlike(judge, this.team, better, position);
	}

	private boolean areRivalsAlike(int judge, int one, int other) {
		for (int rival : this.rivals) {
			if (!isAlike(judge, rival, one, other)) {
				return false;
			}
		}
		return true;
	}

	private boolean isAlike(int judge, int team, int one, int other) {
		int position = this.cards.position(judge, team);
		return effect(position, one) == effect(position, other);
	}

	private int effect(int position, int block) {
		if (block == position && !this.feelsLevel) {
			return 1;
		}
		return Integer.signum(block - position);
	}

}
