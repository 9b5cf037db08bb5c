package rimebook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.points.PanelMean;
import rimebook.tabulation.points.PerformanceScore;
import rimebook.tabulation.points.PointsStanding;

/** Lays standings of points judging out in columns. */
final class PointsTables {

	private PointsTables() {
	}

	static Table places(PointsStanding standing) {
		return new Table(
				"Points, " + StandingTables.count(standing.judges(), "judge") + ", "
						+ StandingTables.entries(standing.rows().size()),
				List.of("place", "entry", "total", "elements", "components", "deductions", "why"),
				List.of("Place", "Entry", "Total", "Elements", "Components", "Deductions", "Why"),
				standing.rows().stream().map(PointsTables::place).toList());
	}

	private static List<String> place(PointsStanding.ScoredEntry row) {
		PerformanceScore score = Objects.requireNonNull(row.score());
		return List.of(String.valueOf(row.place()), row.entry(), score.total().toString(),
				score.elementPoints().toString(), score.componentPoints().toString(), score.deducted().toString(),
				row.why().english());
	}

	/** One line for each element and component. */
	static Table detail(PointsStanding standing) {
		List<List<String>> rows = new ArrayList<>();
		for (PointsStanding.ScoredEntry row : standing.rows()) {
			PerformanceScore score = Objects.requireNonNull(row.score());
			score.elements().forEach((element) -> rows.add(element(row.entry(), element)));
			score.components().forEach((component) -> rows.add(component(row.entry(), component)));
		}
		return new Table("Elements and components",
				List.of("entry", "kind", "code", "base", "panel_grade", "score", "counted"),
				List.of("Entry", "Kind", "Code", "Base", "Panel", "Score", "Judges counted"), rows);
	}

	private static List<String> element(String entry, PerformanceScore.ElementScore element) {
		return List.of(entry, "element", element.element().code(), element.base().toString(),
				element.grade().toString(), element.score().toString(), counted(element.panel()));
	}

	private static List<String> component(String entry, PerformanceScore.ComponentScore component) {
		return List.of(entry, "component", component.rule().name(), "", component.panel().mean().toString(),
				component.points().toString(), counted(component.panel()));
	}

	private static String counted(@Nullable PanelMean panel) {
		return (panel == null) ? ""
				: String.join(" ", panel.countedJudges().stream().map((judge) -> "J" + judge).toList());
	}

}
