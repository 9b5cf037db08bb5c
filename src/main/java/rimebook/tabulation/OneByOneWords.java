package rimebook.tabulation;

/** Words of the one-by-one system. */
record OneByOneWords(Figures.OneByOneFigures figures) implements Reason.ReasonWords {

	@Override
	public String own(Reason reason) {
		String noun = (this.figures.wins() == Hundredths.ONE) ? " comparison" : " comparisons";
		return "won " + wins(this.figures.wins()) + noun + " with "
				+ English.count(this.figures.judgesInFavour(), "judge") + " in favour";
	}

	private static String wins(int wins) {
		return (wins % Hundredths.ONE == 0) ? English.number(wins / Hundredths.ONE) : Hundredths.plain(wins);
	}

	@Override
	public String rivals(Reason.Comparison comparison) {
		return (comparison.criterion() == Criterion.WINS)
				? "who won " + ((comparison.theirs() == 0) ? "none" : wins(comparison.theirs()))
				: "who won as many with " + English.count(comparison.theirs(), "judge") + " in favour";
	}

}
