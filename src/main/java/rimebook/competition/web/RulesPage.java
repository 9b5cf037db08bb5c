package rimebook.competition.web;

import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.SegmentRules;

/** A rule set as people read it. */
record RulesPage(PointsRules rules) {

	/** The factor of a component with two decimals. */
	public String factor(SegmentRules.ComponentRule rule) {
		return new Points(rule.factor()).toString();
	}

}
