package rimebook.points;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.shared.RuleViolationException;
import rimebook.tabulation.points.ElementValue;
import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.SegmentRules;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/** What a judge's card must hold: a grade for each counting element, every component. */
final class PointsCardCheck {

	private final SegmentRules rules;

	private final Optional<CalledListView> list;

	PointsCardCheck(SegmentRules rules, Optional<CalledListView> list) {
		this.rules = rules;
		this.list = list;
	}

	List<CalledElement> elements() {
		return this.list.map(CalledListView::elements).orElse(List.of());
	}

	void require(PointsMarks marks) {
		CalledListView called = this.list
			.orElseThrow(() -> refused("elements-not-called", "grades", Sentence.of("points.elements-not-called")));
		called.counting().forEach((element) -> requireGrade(element, marks.grade(element)));
		marks.grades().keySet().forEach((id) -> requireCalled(called, id));
		this.rules.components().forEach((component) -> requireMark(component, marks.component(component.name())));
		marks.components().keySet().forEach(this::requireComponent);
	}

	private void requireGrade(CalledElement element, @Nullable Integer grade) {
		ElementValue.GradeRange range = this.rules.values().grades();
		String field = "grades[" + element.id() + "]";
		if (grade == null) {
			throw refused("grade-missing", field,
					Sentence.of("points.grade-missing", element.number(), element.code(), range.most()));
		}
		if (!range.contains(grade)) {
			throw refused("grade-out-of-range", field,
					Sentence.of("points.grade-out-of-range", element.number(), element.code(), grade, range.most()));
		}
	}

	private static void requireCalled(CalledListView called, UUID id) {
		if (called.element(id).isEmpty()) {
			throw refused("element-unknown", "grades[" + id + "]", Sentence.of("points.not-called"));
		}
	}

	private static void requireMark(SegmentRules.ComponentRule component, @Nullable Integer mark) {
		String field = "components[" + component.name() + "]";
		if (mark == null) {
			throw refused("component-missing", field, Sentence.of("points.component-missing", component.name()));
		}
		if (!JudgedComponent.isMark(new Points(mark))) {
			throw refused("component-mark-out-of-range", field,
					Sentence.of("points.component-mark-out-of-range", component.name(), PointsWords.of(mark)));
		}
	}

	private void requireComponent(String name) {
		if (this.rules.components().stream().noneMatch((component) -> component.name().equals(name))) {
			throw refused("unknown-component", "components[" + name + "]",
					Sentence.of("points.unknown-component", name, Series
						.withCommas(this.rules.components().stream().map(SegmentRules.ComponentRule::name).toList())));
		}
	}

	private static RuleViolationException refused(String code, String field, Sentence sentence) {
		return new RuleViolationException(code, field, sentence);
	}

}
