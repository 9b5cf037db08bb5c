package rimebook.tabulation;

/**
 * The rule set of one segment under placement judging: every question on which rulebooks
 * differ, answered. A plain value of enums, so it can be stored beside the result it
 * made.
 *
 * @param method how ordinals become places
 * @param cardTieBreak which mark decides equal totals of one judge
 * @param sharedOrdinals ordinals of teams level on one card
 * @param equalJudgesInFavour who wins a one-by-one comparison that is even
 * @param evenPanel whether an even number of judges may be tabulated
 * @param zeroMark what a mark of 0.0 means
 * @param disqualifiedPlaces what becomes of the place of a disqualified team
 * @param marksPerCard how many marks a judge gives each team
 */
public record PlacementRules(PlacementMethod method, CardTieBreak cardTieBreak, SharedOrdinals sharedOrdinals,
		EqualJudgesInFavour equalJudgesInFavour, EvenPanel evenPanel, ZeroMark zeroMark,
		DisqualifiedPlaces disqualifiedPlaces, MarksPerCard marksPerCard) {

	/**
	 * Make rules with two marks a card.
	 * @param method how ordinals become places
	 * @param cardTieBreak which mark decides equal totals of one judge
	 * @param sharedOrdinals ordinals of teams level on one card
	 * @param equalJudgesInFavour who wins a one-by-one comparison that is even
	 * @param evenPanel whether an even number of judges may be tabulated
	 * @param zeroMark what a mark of 0.0 means
	 * @param disqualifiedPlaces what becomes of the place of a disqualified team
	 */
	public PlacementRules(PlacementMethod method, CardTieBreak cardTieBreak, SharedOrdinals sharedOrdinals,
			EqualJudgesInFavour equalJudgesInFavour, EvenPanel evenPanel, ZeroMark zeroMark,
			DisqualifiedPlaces disqualifiedPlaces) {
		this(method, cardTieBreak, sharedOrdinals, equalJudgesInFavour, evenPanel, zeroMark, disqualifiedPlaces,
				MarksPerCard.TWO);
	}

	/**
	 * Return the majority system with the default of every other setting.
	 * @param kind gives the tie-break inside a card
	 * @return the rules
	 */
	public static PlacementRules majority(SegmentKind kind) {
		return defaults(PlacementMethod.MAJORITY, kind);
	}

	/**
	 * Return the one-by-one system with the default of every other setting.
	 * @param kind gives the tie-break inside a card
	 * @return the rules
	 */
	public static PlacementRules oneByOne(SegmentKind kind) {
		return defaults(PlacementMethod.ONE_BY_ONE, kind);
	}

	private static PlacementRules defaults(PlacementMethod method, SegmentKind kind) {
		return new PlacementRules(method, kind.cardTieBreak(), SharedOrdinals.BETTER_THEN_SKIP,
				EqualJudgesInFavour.BOTH_WIN, EvenPanel.REFUSE, ZeroMark.COUNT, DisqualifiedPlaces.CLOSE_FINAL_PLACES);
	}

	/**
	 * Return these rules with another tie-break inside a card.
	 * @param other the tie-break
	 * @return a changed copy
	 */
	public PlacementRules withCardTieBreak(CardTieBreak other) {
		return new PlacementRules(this.method, other, this.sharedOrdinals, this.equalJudgesInFavour, this.evenPanel,
				this.zeroMark, this.disqualifiedPlaces, this.marksPerCard);
	}

	/**
	 * Return these rules with another treatment of shared ordinals.
	 * @param other the treatment
	 * @return a changed copy
	 */
	public PlacementRules withSharedOrdinals(SharedOrdinals other) {
		return new PlacementRules(this.method, this.cardTieBreak, other, this.equalJudgesInFavour, this.evenPanel,
				this.zeroMark, this.disqualifiedPlaces, this.marksPerCard);
	}

	/**
	 * Return these rules with another outcome of an even comparison.
	 * @param other the outcome
	 * @return a changed copy
	 */
	public PlacementRules withEqualJudgesInFavour(EqualJudgesInFavour other) {
		return new PlacementRules(this.method, this.cardTieBreak, this.sharedOrdinals, other, this.evenPanel,
				this.zeroMark, this.disqualifiedPlaces, this.marksPerCard);
	}

	/**
	 * Return these rules with another stand on even panels.
	 * @param other the stand
	 * @return a changed copy
	 */
	public PlacementRules withEvenPanel(EvenPanel other) {
		return new PlacementRules(this.method, this.cardTieBreak, this.sharedOrdinals, this.equalJudgesInFavour, other,
				this.zeroMark, this.disqualifiedPlaces, this.marksPerCard);
	}

	/**
	 * Return these rules with another meaning of 0.0.
	 * @param other the meaning
	 * @return a changed copy
	 */
	public PlacementRules withZeroMark(ZeroMark other) {
		return new PlacementRules(this.method, this.cardTieBreak, this.sharedOrdinals, this.equalJudgesInFavour,
				this.evenPanel, other, this.disqualifiedPlaces, this.marksPerCard);
	}

	/**
	 * Return these rules with another treatment of a disqualified team's place.
	 * @param other the treatment
	 * @return a changed copy
	 */
	public PlacementRules withDisqualifiedPlaces(DisqualifiedPlaces other) {
		return new PlacementRules(this.method, this.cardTieBreak, this.sharedOrdinals, this.equalJudgesInFavour,
				this.evenPanel, this.zeroMark, other, this.marksPerCard);
	}

	/**
	 * Return these rules with another number of marks a card.
	 * @param other the number
	 * @return a changed copy
	 */
	public PlacementRules withMarksPerCard(MarksPerCard other) {
		return new PlacementRules(this.method, this.cardTieBreak, this.sharedOrdinals, this.equalJudgesInFavour,
				this.evenPanel, this.zeroMark, this.disqualifiedPlaces, other);
	}

	/** Whether a panel with an even number of judges may be tabulated. */
	public enum EvenPanel {

		/** Four judges: refused with {@code even-panel} (default). */
		REFUSE,

		/** Four judges: a majority is three, that is half the panel and one more. */
		ALLOW

	}

	/** How many marks a judge gives each team. */
	public enum MarksPerCard {

		/** Two, of which one decides equal totals (default). */
		TWO,

		/**
		 * One, as in some club events (slides "Introduction to 6.0 Scoring System",
		 * pdfslide.net): the total is that mark, the second is 0 and nothing decides
		 * equal totals.
		 */
		ONE

	}

	/**
	 * Who wins a one-by-one comparison in which both teams have the same number of judges
	 * in favour. It can happen on an odd panel, because a judge with the two level counts
	 * for both. No rule text on it was found; the sources say only that a majority of the
	 * judges makes a win.
	 */
	public enum EqualJudgesInFavour {

		/**
		 * Both, since each has a majority: {@code 3 : 3} of five gives 1 and 1 (default).
		 */
		BOTH_WIN(Hundredths.ONE),

		/** Half a win each: {@code 3 : 3} gives 0.5 and 0.5. */
		HALF_EACH(Hundredths.ONE / 2),

		/** Nobody: {@code 3 : 3} gives 0 and 0. */
		NEITHER(0);

		private final int credit;

		EqualJudgesInFavour(int credit) {
			this.credit = credit;
		}

		/**
		 * Return what an even comparison is worth to each of the two.
		 * @return hundredths of a win
		 */
		public int credit() {
			return this.credit;
		}

	}

	/** The ordinals of teams that are level on one judge's card. */
	public enum SharedOrdinals {

		/**
		 * The better ordinal for all, the next ones skipped: {@code 1, 1, 3} (default).
		 */
		BETTER_THEN_SKIP,

		/** The mean of the ordinals they occupy: {@code 1.5, 1.5, 3}. */
		MEAN;

		/**
		 * Return the ordinal of teams that are level on a card.
		 * @param better how many others are ranked before them
		 * @param level how many they are, one at least
		 * @return the ordinal of each, hundredths
		 */
		public int ordinal(int better, int level) {
			int best = (better + 1) * Hundredths.ONE;
			return (this == MEAN) ? best + (level - 1) * Hundredths.ONE / 2 : best;
		}

	}

	/** What a mark of 0.0 means. */
	public enum ZeroMark {

		/** The lowest mark: {@code 0.0 + 2.0} totals 2.0 (default). */
		COUNT,

		/**
		 * Not skated, so a card with it is refused: {@code 0.0 + 2.0} gives
		 * {@code zero-mark}.
		 */
		REFUSE

	}

	/**
	 * Which mark decides between two teams to whom one judge gave the same total. Equal
	 * in that mark too, the teams are level on that judge's card.
	 */
	public enum CardTieBreak {

		/** The higher first mark: {@code 5.8 + 5.6} before {@code 5.6 + 5.8}. */
		FIRST_MARK,

		/** The higher second mark: {@code 5.6 + 5.8} before {@code 5.8 + 5.6}. */
		SECOND_MARK;

		/**
		 * Return the mark that decides.
		 * @param card a judge's card
		 * @return hundredths; the higher one is better
		 */
		public int decidingMark(CardMarks card) {
			return (this == FIRST_MARK) ? card.first() : card.second();
		}

	}

	/** How the judges' ordinals become places. */
	public enum PlacementMethod {

		/**
		 * The lowest place for which a majority of the judges stands: {@code 1 4 4 2 2}
		 * has three of five judges at 2nd or better.
		 */
		MAJORITY,

		/**
		 * Every team against every other: a win goes to the team that more judges
		 * preferred, places go by wins.
		 */
		ONE_BY_ONE

	}

}
