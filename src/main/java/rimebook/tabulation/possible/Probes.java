package rimebook.tabulation.possible;

import java.util.stream.IntStream;

/**
 * Cards worth a look: all of them, where there are few enough; otherwise the block in one
 * place on all cards, relative to each marked team, the same with one judge who thinks
 * otherwise, and where questions are left open many mixtures of these.
 */
final class Probes {

	/** How many variations are made of the cards beside each marked team. */
	private static final int MOST_VARIED = 40_000;

	private static final int MIXTURES = 20_000;

	private static final int MOST_CHANGES = 4;

	private final JudgesCards cards;

	private final Reached reached;

	/** How far apart the positions tried are: 1 unless there are many teams. */
	private final int stride;

	private final Sequence sequence = new Sequence();

	Probes(JudgesCards cards, Reached reached) {
		this.cards = cards;
		this.reached = reached;
		int variations = 2 * 3 * cards.size() * cards.size() * cards.judges();
		this.stride = 1 + variations / MOST_VARIED;
	}

	/** Whether there are few enough positions to try them all. */
	boolean canTryAll(int most) {
		long all = 1;
		for (int judge = 0; judge < this.cards.judges() && all <= most; judge++) {
			all *= this.cards.open(judge).length;
		}
		return all <= most;
	}

	void all() {
		all(this.cards.best(), 0);
	}

	private void all(int[] block, int judge) {
		if (judge == block.length) {
			this.reached.note(block);
			return;
		}
		for (int position : this.cards.open(judge)) {
			block[judge] = position;
			all(block, judge + 1);
		}
	}

	void some(boolean thoroughly) {
		this.reached.noteInOrders(this.cards.best());
		this.reached.noteInOrders(this.cards.worst());
		for (int team = 0; team < this.cards.size(); team++) {
			for (int by = -1; by <= 1; by++) {
				int[] block = beside(team, by);
				this.reached.noteInOrders(block);
				if (thoroughly) {
					vary(block);
				}
			}
		}
	}

	private int[] beside(int team, int by) {
		return IntStream.range(0, this.cards.judges()).map((judge) -> beside(judge, team, by)).toArray();
	}

	/** Return the open position nearest to the one wanted, the better of two. */
	private int beside(int judge, int team, int by) {
		int[] open = this.cards.open(judge);
		int wanted = this.cards.position(judge, team) + by;
		int nearest = open[0];
		for (int position : open) {
			nearest = (Math.abs(position - wanted) < Math.abs(nearest - wanted)) ? position : nearest;
		}
		return nearest;
	}

	private void vary(int[] block) {
		for (int judge = 0; judge < block.length; judge++) {
			int[] varied = block.clone();
			int[] open = this.cards.open(judge);
			for (int i = 0; i < open.length; i += this.stride) {
				varied[judge] = open[i];
				this.reached.note(varied);
			}
		}
	}

	/** Mix, for teams of which it is not known what they can reach. */
	void mix(int[] teams) {
		for (int i = 0; i < MIXTURES && teams.length > 0; i++) {
			int[] block = beside(this.sequence.next(this.cards.size()), this.sequence.next(3) - 1);
			for (int changes = 1 + this.sequence.next(MOST_CHANGES); changes > 0; changes--) {
				int judge = this.sequence.next(block.length);
				block[judge] = position(judge, teams[this.sequence.next(teams.length)]);
			}
			this.reached.note(block);
		}
	}

	private int position(int judge, int team) {
		int[] open = this.cards.open(judge);
		return switch (this.sequence.next(5)) {
			case 0 -> open[0];
			case 1 -> open[open.length - 1];
			case 2 -> beside(judge, this.sequence.next(this.cards.size()), this.sequence.next(3) - 1);
			default -> beside(judge, team, this.sequence.next(3) - 1);
		};
	}

	/** Numbers that look thrown but are always the same. */
	private static final class Sequence {

		private long state = 1;

		int next(int bound) {
			this.state = this.state * 6_364_136_223_846_793_005L + 1_442_695_040_888_963_407L;
			return (int) ((this.state >>> 33) % bound);
		}

	}

}
