package rimebook.rosters.eligibility;

import rimebook.wording.Sentence;

/**
 * Something in a roster that a rule of the event does not allow.
 *
 * @param member whom it is about by {@link Team.Member#id()}, empty where it is about the
 * whole team
 * @param sentence one sentence that names the rule and who or what breaks it
 */
public record Finding(Rule rule, String member, Sentence sentence) {

	static Finding ofTeam(Rule rule, Sentence what) {
		return of(rule, "", what);
	}

	static Finding of(Rule rule, String member, Sentence what) {
		return new Finding(rule, member, Sentence.of("rosters.finding", rule.spoken(), what));
	}

	/** Tell whether both are about the same rule and the same person. */
	public boolean isAbout(Rule rule, String member) {
		return this.rule == rule && this.member.equals(member);
	}

}
