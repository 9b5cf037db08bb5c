package rimebook.results;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.TieBreak;

/** Names the rule set of points judging on every sheet. */
final class PointsWording {

	private PointsWording() {
	}

	static String ofSegment(PointsRules rules, EventView event, SegmentView segment) {
		return ruleSet(rules, event) + "; equal totals "
				+ tieBreak(rules.tieBreaks().getOrDefault(segment.kind(), TieBreak.NONE), segment.kind());
	}

	static String ofEvent(PointsRules rules, EventView event) {
		return ruleSet(rules, event) + "; points of the segments added, equal totals by the last segment";
	}

	private static String ruleSet(PointsRules rules, EventView event) {
		String level = (event.points() != null) ? event.points().level() : "";
		return "Points; " + event.judges() + " judges; " + rules.title() + ", " + level + "; "
				+ ((event.judges() >= rules.trimFrom()) ? "highest and lowest mark of each line left out"
						: "all marks count");
	}

	private static String tieBreak(TieBreak tieBreak, SegmentKind kind) {
		String segment = (kind == SegmentKind.SHORT) ? "short programme" : "free skating";
		return switch (tieBreak) {
			case ELEMENTS -> "in a " + segment + " by the elements";
			case COMPONENTS -> "in a " + segment + " by the components";
			case NONE -> "share the place";
		};
	}

}
