package rimebook.marks.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.UUID;

import org.springframework.validation.Errors;

import rimebook.marks.CalledElement;
import rimebook.marks.PointsCardView;
import rimebook.marks.PointsMarks;
import rimebook.marks.PointsWords;
import rimebook.panels.SeatView;
import rimebook.tabulation.points.ComponentRule;
import rimebook.tabulation.points.GradeRange;
import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.Points;

/** One judge's card of points judging as typed. */
class CardForm extends KeyedForm {

	private List<Line> grades = new ArrayList<>();

	private List<Line> components = new ArrayList<>();

	static CardForm of(KeyingPage page, SeatView seat) {
		CardForm form = new CardForm();
		PointsCardView card = page.card(seat);
		form.restOn(page, (card != null) ? card.sequence() : 0);
		page.counting()
			.forEach((element) -> form.grades.add(new Line(element.id().toString(), page.grade(seat, element))));
		page.components()
			.forEach((component) -> form.components.add(new Line(component.name(), page.mark(seat, component))));
		return form;
	}

	/**
	 * Fit the lines to what has to be given now, keeping what is typed: the list of
	 * elements may have changed since the form was opened.
	 */
	CardForm fitted(KeyingPage page) {
		Map<String, String> typed = new LinkedHashMap<>();
		this.grades.forEach((line) -> typed.put(line.key, line.typed));
		this.components.forEach((line) -> typed.put(line.key, line.typed));
		this.grades = new ArrayList<>(page.counting()
			.stream()
			.map((element) -> element.id().toString())
			.map((id) -> new Line(id, typed.getOrDefault(id, "")))
			.toList());
		this.components = new ArrayList<>(page.components()
			.stream()
			.map((component) -> new Line(component.name(), typed.getOrDefault(component.name(), "")))
			.toList());
		return this;
	}

	/** Say beside each field what is wrong with it; the lines fit the page. */
	void check(KeyingPage page, Errors errors) {
		if (page.list() == null) {
			errors.reject("marks.keying.card.no-list");
		}
		List<CalledElement> elements = page.counting();
		for (int i = 0; i < elements.size(); i++) {
			checkGrade(i, elements.get(i), page.rules().values().grades(), errors);
		}
		List<ComponentRule> rules = page.components();
		for (int i = 0; i < rules.size(); i++) {
			OptionalInt mark = PointsWords.readHundredths(this.components.get(i).typed);
			if (mark.isEmpty() || !JudgedComponent.isMark(new Points(mark.getAsInt()))) {
				errors.rejectValue("components[" + i + "].typed", "marks.keying.mark.wrong",
						new Object[] { rules.get(i).name() }, null);
			}
		}
	}

	private void checkGrade(int index, CalledElement element, GradeRange range, Errors errors) {
		OptionalInt grade = PointsWords.readGrade(this.grades.get(index).typed);
		if (grade.isEmpty() || !range.contains(grade.getAsInt())) {
			errors.rejectValue("grades[" + index + "].typed", "marks.keying.grade.wrong",
					new Object[] { element.number(), element.code(), range.most() }, null);
		}
	}

	PointsMarks marks() {
		Map<UUID, Integer> grades = new LinkedHashMap<>();
		this.grades
			.forEach((line) -> grades.put(UUID.fromString(line.key), PointsWords.readGrade(line.typed).orElseThrow()));
		Map<String, Integer> components = new LinkedHashMap<>();
		this.components
			.forEach((line) -> components.put(line.key, PointsWords.readHundredths(line.typed).orElseThrow()));
		return new PointsMarks(grades, components);
	}

	public List<Line> getGrades() {
		return this.grades;
	}

	public void setGrades(List<Line> grades) {
		this.grades = grades;
	}

	public List<Line> getComponents() {
		return this.components;
	}

	public void setComponents(List<Line> components) {
		this.components = components;
	}

	/** What is typed for one element or component. */
	static class Line {

		private String key = "";

		private String typed = "";

		Line() {
		}

		Line(String key, String typed) {
			this.key = key;
			this.typed = typed;
		}

		/** The identity of the element, or the name of the component. */
		public String getKey() {
			return this.key;
		}

		public void setKey(String key) {
			this.key = key;
		}

		public String getTyped() {
			return this.typed;
		}

		public void setTyped(String typed) {
			this.typed = typed;
		}

	}

}
