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
		CalledListView called = this.list.orElseThrow(() -> refused("elements-not-called", "grades",
				"No elements are called for this performance yet; grades are given to called elements."));
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
					"Element " + element.number() + " (" + element.code() + ") has no grade; a whole number from -"
							+ range.most() + " to +" + range.most() + " is expected.");
		}
		if (!range.contains(grade)) {
			throw refused("grade-out-of-range", field,
					"The grade of element " + element.number() + " (" + element.code() + ") is " + grade
							+ "; it must be from -" + range.most() + " to +" + range.most() + ".");
		}
	}

	private static void requireCalled(CalledListView called, UUID id) {
		if (called.element(id).isEmpty()) {
			throw refused("element-unknown", "grades[" + id + "]",
					"A grade is given to an element that is not in the list of called elements.");
		}
	}

	private static void requireMark(SegmentRules.ComponentRule component, @Nullable Integer mark) {
		String field = "components[" + component.name() + "]";
		if (mark == null) {
			throw refused("component-missing", field,
					component.name() + " has no mark; 0.25 to 10.00 in steps of 0.25 is expected.");
		}
		if (!JudgedComponent.isMark(new Points(mark))) {
			throw refused("component-mark-out-of-range", field, "The mark of " + component.name() + " is "
					+ PointsWords.of(mark) + "; it must be 0.25 to 10.00 in steps of 0.25.");
		}
	}

	private void requireComponent(String name) {
		if (this.rules.components().stream().noneMatch((component) -> component.name().equals(name))) {
			throw refused("unknown-component", "components[" + name + "]",
					"'" + name + "' is no component of this segment; it has "
							+ String.join(", ",
									this.rules.components().stream().map(SegmentRules.ComponentRule::name).toList())
							+ ".");
		}
	}

	private static RuleViolationException refused(String code, String field, String sentence) {
		return new RuleViolationException(code, field, sentence);
	}

}
