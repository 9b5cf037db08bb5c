package rimebook.competition;

import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.PlacementRules;

/**
 * The answers to the questions on which rulebooks for placement judging differ, fixed for
 * an event before its first draw. A short programme always goes by the first mark, since
 * no rulebook says otherwise.
 *
 * @param freeSkatingTieBreak which mark of a free skating decides equal totals of one
 * judge
 * @param sharedOrdinals ordinals of teams level on one card
 * @param equalJudgesInFavour who wins a one-by-one comparison that is even
 * @param zeroMark what a mark of 0.0 means
 * @param disqualifiedPlaces what becomes of the place of a disqualified team
 */
public record JudgingPolicies(PlacementRules.CardTieBreak freeSkatingTieBreak,
		PlacementRules.SharedOrdinals sharedOrdinals, PlacementRules.EqualJudgesInFavour equalJudgesInFavour,
		PlacementRules.ZeroMark zeroMark, DisqualifiedPlaces disqualifiedPlaces) {

	private static final JudgingPolicies USUAL = new JudgingPolicies(PlacementRules.CardTieBreak.SECOND_MARK,
			PlacementRules.SharedOrdinals.BETTER_THEN_SKIP, PlacementRules.EqualJudgesInFavour.BOTH_WIN,
			PlacementRules.ZeroMark.COUNT, DisqualifiedPlaces.CLOSE_FINAL_PLACES);

	/** The answers best supported by published rules and results. */
	public static JudgingPolicies usual() {
		return USUAL;
	}

	/** The answers in one line, for the record. */
	String inWords() {
		return equals(USUAL) ? "usual rule set" : "rule set %s, %s, %s, %s, %s".formatted(this.freeSkatingTieBreak,
				this.sharedOrdinals, this.equalJudgesInFavour, this.zeroMark, this.disqualifiedPlaces);
	}

}
