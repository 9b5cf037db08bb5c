package rimebook.review;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.Hundredths;
import rimebook.wording.Sentence;

/**
 * How far a judge agrees with the others, as it is read.
 *
 * @param who the judge's name, or the seat where there is none
 * @param seats the seats the judge had, in words; empty where {@code who} says it
 * @param kendall in hundredths, {@code null} where there is none
 * @param spearman in hundredths, {@code null} where there is none
 * @param pairs of teams
 * @param lack why there is neither; {@code null} where there is
 * @param distance of the marks
 * @param outlying how many marks are pointed out
 */
public record JudgeLine(Sentence who, List<Sentence> seats, @Nullable Integer kendall, @Nullable Integer spearman,
		Pairs pairs, @Nullable Lack lack, MarkDistance distance, int outlying) {

	private static final int ONE = Hundredths.ONE;

	/** So close to one that only the figures of the machine are in between. */
	private static final double NEARLY_ONE = 1 - 1e-9;

	public JudgeLine {
		seats = List.copyOf(seats);
	}

	static JudgeLine of(Sentence who, List<Sentence> seats, Tally tally) {
		return new JudgeLine(who, seats, rounded(tally.kendall()), rounded(tally.spearman()), tally.pairs(),
				tally.lack(),
				new MarkDistance(tally.distance().marks(), tally.distance().meanAway(), tally.distance().meanAbove()),
				tally.outlying());
	}

	/** In hundredths; only a full agreement, or its opposite, is written as one. */
	static @Nullable Integer rounded(@Nullable Double figure) {
		if (figure == null) {
			return null;
		}
		int hundredths = (int) Math.round(Math.abs(figure) * ONE);
		int size = (Math.abs(figure) < NEARLY_ONE) ? Math.min(hundredths, ONE - 1) : ONE;
		return (figure < 0) ? -size : size;
	}

	/** Kendall's figure in words, or a dash. */
	public Sentence kendallSpoken() {
		return Figure.plain(this.kendall);
	}

	/** Spearman's figure in words, or a dash. */
	public Sentence spearmanSpoken() {
		return Figure.plain(this.spearman);
	}

	/** The pairs in words; {@link Sentence#NONE} where there are none. */
	public Sentence pairsSpoken() {
		return (this.pairs.all() == 0) ? Sentence.NONE : Sentence.of("review.pairs", this.pairs.same(),
				this.pairs.all(), this.pairs.reversed(), this.pairs.level());
	}

	/** Why there is no figure in words; {@link Sentence#NONE} where there is one. */
	public Sentence lackSpoken() {
		return (this.lack != null) ? this.lack.spoken() : Sentence.NONE;
	}

	/**
	 * How far the marks are from the averages of the other judges.
	 *
	 * @param marks how many were compared
	 * @param away on average, whichever way; in hundredths, {@code null} without marks
	 * @param above on average above them, negative below; in hundredths, {@code null}
	 * without marks
	 */
	public record MarkDistance(int marks, @Nullable Integer away, @Nullable Integer above) {

		/** How far away in words, or a dash. */
		public Sentence awaySpoken() {
			return Figure.plain(this.away);
		}

		/** How far above or below in words, with its sign, or a dash. */
		public Sentence aboveSpoken() {
			return Figure.signed(this.above);
		}

	}

}
