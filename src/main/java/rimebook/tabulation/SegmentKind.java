package rimebook.tabulation;

/** What a segment asks for, and with it the tie-break inside one judge's card. */
public enum SegmentKind {

	/**
	 * A short or technical programme with required elements: equal totals go by the first
	 * mark.
	 */
	SHORT(PlacementRules.CardTieBreak.FIRST_MARK),

	/** A free skating: equal totals go by the second mark. */
	FREE(PlacementRules.CardTieBreak.SECOND_MARK);

	private final PlacementRules.CardTieBreak cardTieBreak;

	SegmentKind(PlacementRules.CardTieBreak cardTieBreak) {
		this.cardTieBreak = cardTieBreak;
	}

	/**
	 * Return the tie-break usual for this kind of segment (ISU guidelines for the manual
	 * use of the results system, 1998).
	 * @return the default; a rule set may choose the other
	 */
	public PlacementRules.CardTieBreak cardTieBreak() {
		return this.cardTieBreak;
	}

}
