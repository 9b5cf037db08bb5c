package rimebook.results;

import java.util.List;
import java.util.stream.IntStream;

import rimebook.published.Standing;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.PanelMean;
import rimebook.tabulation.points.PerformanceScore;
import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.PointsRules;

/** Lays out a computed score so that a reader can check it. */
final class Scores {

	private final PointsRules rules;

	Scores(PointsRules rules) {
		this.rules = rules;
	}

	Standing.Score of(PerformanceScore score) {
		return new Standing.Score(score.total().hundredths(), score.elementPoints().hundredths(),
				score.basePoints().hundredths(), score.componentPoints().hundredths(), score.deducted().hundredths(),
				score.elements().stream().map(this::line).toList(),
				score.components().stream().map(Scores::line).toList(),
				score.deductions().stream().map(this::line).toList());
	}

	private Standing.Score.ElementLine line(PerformanceScore.ElementScore score) {
		return new Standing.Score.ElementLine(score.element().number(), score.element().code(),
				this.rules.nameOf(score.element().code()), score.element().worth().name(), score.base().hundredths(),
				grades(score), score.grade().hundredths(), score.score().hundredths());
	}

	/** The grades of an element without value are kept and count nowhere. */
	private static List<Standing.Score.Mark> grades(PerformanceScore.ElementScore score) {
		PanelMean panel = score.panel();
		if (panel == null) {
			return List.of();
		}
		List<PanelMean.PanelMark> marks = panel.marks();
		return IntStream.range(0, marks.size())
			.mapToObj((i) -> new Standing.Score.Mark(score.element().grades().get(i), marks.get(i).use().name()))
			.toList();
	}

	private static Standing.Score.ComponentLine line(PerformanceScore.ComponentScore score) {
		return new Standing.Score.ComponentLine(score.rule().name(), score.rule().factor(),
				score.panel().marks().stream().map(Scores::mark).toList(), score.panel().mean().hundredths(),
				score.points().hundredths());
	}

	private static Standing.Score.Mark mark(PanelMean.PanelMark mark) {
		Points points = mark.points();
		return new Standing.Score.Mark(
				(points != null && mark.use() != PanelMean.MarkUse.ABSENT) ? points.hundredths() : null,
				mark.use().name());
	}

	private Standing.Score.DeductionLine line(DeductionRule.Deduction deduction) {
		return new Standing.Score.DeductionLine(deduction.item(),
				this.rules.deduction(deduction.item()).map(DeductionRule::name).orElse(deduction.item()),
				deduction.count(), deduction.points().hundredths());
	}

}
