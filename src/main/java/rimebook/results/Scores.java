package rimebook.results;

import java.util.List;
import java.util.stream.IntStream;

import rimebook.tabulation.points.ComponentScore;
import rimebook.tabulation.points.Deduction;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.ElementScore;
import rimebook.tabulation.points.MarkUse;
import rimebook.tabulation.points.PanelMark;
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

	Score of(PerformanceScore score) {
		return new Score(score.total().hundredths(), score.elementPoints().hundredths(),
				score.basePoints().hundredths(), score.componentPoints().hundredths(), score.deducted().hundredths(),
				score.elements().stream().map(this::line).toList(),
				score.components().stream().map(Scores::line).toList(),
				score.deductions().stream().map(this::line).toList());
	}

	private Score.ElementLine line(ElementScore score) {
		return new Score.ElementLine(score.element().number(), score.element().code(),
				this.rules.nameOf(score.element().code()), score.element().worth().name(), score.base().hundredths(),
				grades(score), score.grade().hundredths(), score.score().hundredths());
	}

	/** The grades of an element without value are kept and count nowhere. */
	private static List<Score.Mark> grades(ElementScore score) {
		PanelMean panel = score.panel();
		if (panel == null) {
			return List.of();
		}
		List<PanelMark> marks = panel.marks();
		return IntStream.range(0, marks.size())
			.mapToObj((i) -> new Score.Mark(score.element().grades().get(i), marks.get(i).use().name()))
			.toList();
	}

	private static Score.ComponentLine line(ComponentScore score) {
		return new Score.ComponentLine(score.rule().name(), score.rule().factor(),
				score.panel().marks().stream().map(Scores::mark).toList(), score.panel().mean().hundredths(),
				score.points().hundredths());
	}

	private static Score.Mark mark(PanelMark mark) {
		Points points = mark.points();
		return new Score.Mark((points != null && mark.use() != MarkUse.ABSENT) ? points.hundredths() : null,
				mark.use().name());
	}

	private Score.DeductionLine line(Deduction deduction) {
		return new Score.DeductionLine(deduction.item(),
				this.rules.deduction(deduction.item()).map(DeductionRule::name).orElse(deduction.item()),
				deduction.count(), deduction.points().hundredths());
	}

}
