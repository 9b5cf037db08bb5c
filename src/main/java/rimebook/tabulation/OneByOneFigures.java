package rimebook.tabulation;

import java.util.List;

/**
 * The figures of the one-by-one system.
 *
 * @param wins comparisons won, hundredths since a rule set may give half a win
 * @param judgesInFavour judges in favour over all comparisons
 */
public record OneByOneFigures(int wins, int judgesInFavour) implements Figures {

	/** Return the sorting key: more wins, then more judges in favour. */
	@Override
	public List<Measure> measures() {
		return List.of(new Measure(Criterion.WINS, this.wins),
				new Measure(Criterion.JUDGES_IN_FAVOUR, this.judgesInFavour));
	}

}
