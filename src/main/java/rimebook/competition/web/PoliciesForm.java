package rimebook.competition.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.JudgingPolicies;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.PlacementRules;

/** What is chosen of the rule set; what is not chosen is as usual. */
record PoliciesForm(PlacementRules.@Nullable CardTieBreak freeSkatingTieBreak,
		PlacementRules.@Nullable SharedOrdinals sharedOrdinals,
		PlacementRules.@Nullable EqualJudgesInFavour equalJudgesInFavour, PlacementRules.@Nullable ZeroMark zeroMark,
		@Nullable DisqualifiedPlaces disqualifiedPlaces) {

	static PoliciesForm of(JudgingPolicies policies) {
		return new PoliciesForm(policies.freeSkatingTieBreak(), policies.sharedOrdinals(),
				policies.equalJudgesInFavour(), policies.zeroMark(), policies.disqualifiedPlaces());
	}

	JudgingPolicies policies() {
		JudgingPolicies usual = JudgingPolicies.usual();
		return new JudgingPolicies(or(this.freeSkatingTieBreak, usual.freeSkatingTieBreak()),
				or(this.sharedOrdinals, usual.sharedOrdinals()),
				or(this.equalJudgesInFavour, usual.equalJudgesInFavour()), or(this.zeroMark, usual.zeroMark()),
				or(this.disqualifiedPlaces, usual.disqualifiedPlaces()));
	}

	private static <T> T or(@Nullable T chosen, T usual) {
		return (chosen != null) ? chosen : usual;
	}

}
