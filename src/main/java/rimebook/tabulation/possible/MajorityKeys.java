package rimebook.tabulation.possible;

import rimebook.tabulation.Hundredths;
import rimebook.tabulation.PlacementRules;

/**
 * Majority: the majority place, the size of the majority, its total and the total of all
 * ordinals, packed into one number. Ordinals are counted in halves.
 */
final class MajorityKeys implements RankKeys {

	private static final int HALF = Hundredths.ONE / 2;

	private static final int TOTAL_BITS = 20;

	private static final int SIZE_BITS = 7;

	private static final int MOST_JUDGES_KNOWN = 10;

	private final JudgesCards cards;

	private final boolean mean;

	private final int blockSize;

	/** By judge, then by team: ordinals among the teams marked so far. */
	private final int[][] ordinals;

	/** By judge, then by position. */
	private final int[][] blockOrdinals;

	/** Keys once worked out, by team and index; empty where there would be too many. */
	private final long[][] known;

	private final int[] sorted;

	MajorityKeys(JudgesCards cards, PlacementRules.SharedOrdinals sharedOrdinals, int blockSize) {
		this.cards = cards;
		this.mean = sharedOrdinals == PlacementRules.SharedOrdinals.MEAN;
		this.blockSize = blockSize;
		this.sorted = new int[cards.judges()];
		boolean isSmall = !this.mean && cards.judges() <= MOST_JUDGES_KNOWN;
		this.known = isSmall ? new long[cards.size()][1 << cards.judges()] : new long[0][];
		this.ordinals = new int[cards.judges()][cards.size()];
		this.blockOrdinals = new int[cards.judges()][];
		for (int judge = 0; judge < cards.judges(); judge++) {
			for (int team = 0; team < cards.size(); team++) {
				this.ordinals[judge][team] = cards.team(team).ordinals().get(judge) / HALF;
			}
			this.blockOrdinals[judge] = blockOrdinals(judge, sharedOrdinals);
		}
	}

	private int[] blockOrdinals(int judge, PlacementRules.SharedOrdinals sharedOrdinals) {
		int[] open = this.cards.open(judge);
		int[] halves = new int[open[open.length - 1] + 1];
		for (int position : open) {
			halves[position] = sharedOrdinals.ordinal(this.cards.better(judge, position),
					this.blockSize + this.cards.level(judge, position)) / HALF;
		}
		return halves;
	}

	@Override
	public long marked(int team, int[] block) {
		if (this.known.length == 0) {
			return pushed(team, block);
		}
		int index = index(team, block);
		if (this.known[team][index] == 0) {
			this.known[team][index] = pushed(team, block);
		}
		return this.known[team][index];
	}

	/** Return a number that says on which cards the block moves the team down. */
	private int index(int team, int[] block) {
		int index = 0;
		for (int judge = 0; judge < block.length; judge++) {
			index = (index << 1) + ((block[judge] < this.cards.position(judge, team)) ? 1 : 0);
		}
		return index;
	}

	private long pushed(int team, int[] block) {
		for (int judge = 0; judge < block.length; judge++) {
			insert(judge, this.ordinals[judge][team] + push(block[judge], this.cards.position(judge, team)));
		}
		return key();
	}

	/** By how many halves the block moves a team down. */
	private int push(int block, int position) {
		if (block < position) {
			return 2 * this.blockSize;
		}
		return (this.mean && block == position) ? this.blockSize : 0;
	}

	@Override
	public long block(int[] block) {
		for (int judge = 0; judge < block.length; judge++) {
			insert(judge, this.blockOrdinals[judge][block[judge]]);
		}
		return key();
	}

	@Override
	public long inBlock(int[] block, int before) {
		for (int judge = 0; judge < block.length; judge++) {
			insert(judge, 2 * (this.cards.better(judge, block[judge]) + 1 + before));
		}
		return key();
	}

	private void insert(int count, int ordinal) {
		int i = count;
		while (i > 0 && this.sorted[i - 1] > ordinal) {
			this.sorted[i] = this.sorted[i - 1];
			i--;
		}
		this.sorted[i] = ordinal;
	}

	private long key() {
		int judges = this.sorted.length;
		if (judges == 0) {
			return 0;
		}
		int majorityPlace = this.sorted[judges / 2];
		int size = 0;
		int totalOfMajority = 0;
		while (size < judges && this.sorted[size] <= majorityPlace) {
			totalOfMajority += this.sorted[size++];
		}
		int total = totalOfMajority;
		for (int i = size; i < judges; i++) {
			total += this.sorted[i];
		}
		long place = ((long) majorityPlace << SIZE_BITS) + (1 << SIZE_BITS) - 1 - size;
		return (((place << TOTAL_BITS) + totalOfMajority) << TOTAL_BITS) + total;
	}

	@Override
	public boolean feelsLevelBlock() {
		return this.mean;
	}

	/**
	 * To keep up, there must be a place for which the team has a majority while the rival
	 * has none for any better one. A judge who ranks the team before the rival can grant
	 * both, one who ranks it behind only either.
	 */
	@Override
	public boolean mayKeepUp(int team, int rival) {
		int last = 2 * (this.cards.size() + this.blockSize);
		for (int place = 2; place <= last; place++) {
			if (mayKeepUpAt(place, team, rival)) {
				return true;
			}
		}
		return false;
	}

	private boolean mayKeepUpAt(int place, int team, int rival) {
		int held = 0;
		int pushed = 0;
		int either = 0;
		for (int[] judge : this.ordinals) {
			boolean hold = judge[team] <= place;
			boolean push = judge[rival] + 2 * this.blockSize >= place;
			if (hold && push && judge[team] > judge[rival]) {
				either++;
			}
			else {
				held += hold ? 1 : 0;
				pushed += push ? 1 : 0;
			}
		}
		int need = this.ordinals.length / 2 + 1;
		int lacking = Math.max(0, need - held) + Math.max(0, this.ordinals.length - need + 1 - pushed);
		return lacking <= either;
	}

}
