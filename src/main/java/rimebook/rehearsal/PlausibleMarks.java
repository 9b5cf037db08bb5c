package rimebook.rehearsal;

import java.util.Random;

import rimebook.tabulation.CardMarks;

/**
 * Marks as a panel might give them: a team has its strength, a judge a leaning, and every
 * card its own accident. The same seat, team and segment always get the same card.
 */
public final class PlausibleMarks {

	private static final long SEED = 20270213;

	private PlausibleMarks() {
	}

	/**
	 * Make up a card.
	 * @param seat the seat's number
	 * @param team the team's name
	 * @param segment the segment's name
	 */
	public static CardMarks of(int seat, String team, String segment) {
		double strength = 4.5 + 0.9 * random(team).nextDouble() + 0.2 * random(team + segment).nextGaussian();
		double leaning = 0.1 * random("seat " + seat).nextGaussian();
		Random accident = random(seat + team + segment);
		return new CardMarks(tenths(strength + leaning + 0.14 * accident.nextGaussian()),
				tenths(strength + leaning + 0.14 * accident.nextGaussian()));
	}

	private static Random random(String of) {
		return new Random(SEED * 31 + of.hashCode());
	}

	private static int tenths(double mark) {
		return (int) Math.max(10, Math.min(59, Math.round(mark * 10))) * 10;
	}

}
