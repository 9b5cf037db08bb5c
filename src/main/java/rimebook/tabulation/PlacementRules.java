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

}
