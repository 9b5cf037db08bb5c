package rimebook.points;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.UUID;

import rimebook.paper.PaperCards;
import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.Points;

/**
 * A line of a paper card of points judging: the grade of an element, a whole number from
 * minus to plus the greatest, or the mark of a component, 0.25 to 10.00 in quarters.
 */
record GradedLine(String key, String kind, int number, String name, int most) implements PaperCards.CardLine {

	private static final String GRADE = "GRADE";

	private static final String COMPONENT = "COMPONENT";

	private static final String OF_GRADES = "grade:";

	private static final String OF_COMPONENTS = "component:";

	static GradedLine of(CalledElement element, int most) {
		return new GradedLine(OF_GRADES + element.id(), GRADE, element.number(), element.code(), most);
	}

	static GradedLine ofComponent(String name) {
		return new GradedLine(OF_COMPONENTS + name, COMPONENT, 0, name, 0);
	}

	/** The lines of a card of points judging. */
	static PaperCards.KeyedCard card(PointsMarks marks) {
		Map<String, Integer> lines = new LinkedHashMap<>();
		marks.grades().forEach((element, grade) -> lines.put(OF_GRADES + element, grade));
		marks.components().forEach((name, mark) -> lines.put(OF_COMPONENTS + name, mark));
		return new PaperCards.KeyedCard(lines);
	}

	/** Read as a card of points judging; what is no line of one is passed over. */
	static PointsMarks marks(PaperCards.KeyedCard card) {
		Map<UUID, Integer> grades = new LinkedHashMap<>();
		Map<String, Integer> components = new LinkedHashMap<>();
		card.lines().forEach((key, value) -> {
			if (key.startsWith(OF_GRADES)) {
				grades.put(UUID.fromString(key.substring(OF_GRADES.length())), value);
			}
			else if (key.startsWith(OF_COMPONENTS)) {
				components.put(key.substring(OF_COMPONENTS.length()), value);
			}
		});
		return new PointsMarks(grades, components);
	}

	@Override
	public String words(int value) {
		return isGrade() ? PointsWords.grade(value) : PointsWords.of(value);
	}

	/** {@code "+2"} for a grade, {@code "7.25"} for a component. */
	@Override
	public OptionalInt read(String typed) {
		OptionalInt value = isGrade() ? PointsWords.readGrade(typed) : PointsWords.readHundredths(typed);
		return value.isPresent() && fits(value.getAsInt()) ? value : OptionalInt.empty();
	}

	private boolean fits(int value) {
		return isGrade() ? Math.abs(value) <= this.most : JudgedComponent.isMark(new Points(value));
	}

	private boolean isGrade() {
		return this.kind.equals(GRADE);
	}

}
