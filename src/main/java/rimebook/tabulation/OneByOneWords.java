package rimebook.tabulation;

import rimebook.wording.Sentence;

/** Words of the one-by-one system. */
record OneByOneWords(Figures.OneByOneFigures figures) implements Reason.ReasonWords {

	@Override
	public Sentence own(Reason reason) {
		int wins = this.figures.wins();
		return Sentence.of((wins == Hundredths.ONE) ? "why.one-by-one.own-one" : "why.one-by-one.own", wins(wins),
				Phrases.judges(this.figures.judgesInFavour()));
	}

	private static Sentence wins(int wins) {
		return (wins % Hundredths.ONE == 0) ? Phrases.number(wins / Hundredths.ONE) : Phrases.plain(wins);
	}

	@Override
	public Sentence rivals(Reason.Comparison comparison) {
		int theirs = comparison.theirs();
		if (comparison.criterion() != Criterion.WINS) {
			return Sentence.of("why.one-by-one.who-judges", Phrases.judges(theirs));
		}
		return (theirs == 0) ? Sentence.of("why.one-by-one.who-none") : Sentence.of("why.one-by-one.who", wins(theirs));
	}

}
