package rimebook.competition;

import rimebook.shared.Required;

/**
 * By which rules the points of an event are counted. An event keeps the rule set it was
 * opened with.
 *
 * @param ruleSet the identity of a rule set that is known here, such as
 * {@code synchronized-2025-26}
 * @param level the level of skating as the rule set names it, such as {@code senior}
 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
 */
public record PointsChoice(String ruleSet, String level) {

	public PointsChoice {
		ruleSet = Required.text("points", ruleSet, 80);
		level = Required.text("points", level, 60);
	}

}
