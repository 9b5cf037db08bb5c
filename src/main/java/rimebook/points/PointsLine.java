package rimebook.points;

import java.util.OptionalInt;

import org.jspecify.annotations.Nullable;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * One line of a judge's card in points judging.
 *
 * @param element number of the element in the closed list, 0 for a component
 * @param component name of the component, empty for an element
 */
public record PointsLine(int element, String component) {

	private static final String ELEMENT = "element:";

	private static final String COMPONENT = "component:";

	/** The line of an element. */
	public static PointsLine ofElement(int number) {
		return new PointsLine(number, "");
	}

	/** The line of a component. */
	public static PointsLine ofComponent(String name) {
		return new PointsLine(0, name);
	}

	/**
	 * Read a line: {@code element:3} or {@code component:Composition}.
	 * @throws RuleViolationException {@code line-unknown}
	 */
	public static PointsLine parse(String text) {
		if (text.matches(ELEMENT + "[1-9]\\d?")) {
			return ofElement(Integer.parseInt(text.substring(ELEMENT.length())));
		}
		if (text.startsWith(COMPONENT) && text.length() > COMPONENT.length() && text.length() <= 120) {
			return ofComponent(text.substring(COMPONENT.length()));
		}
		throw unknown();
	}

	static RuleViolationException unknown() {
		return new RuleViolationException("line-unknown", "line", Sentence.of("points.line-unknown"));
	}

	/** Tell whether it is the line of an element. */
	public boolean isElement() {
		return this.element > 0;
	}

	/** Read what is typed for this line, {@code null} if it is no number. */
	public @Nullable Integer read(String typed) {
		OptionalInt value = isElement() ? PointsWords.readGrade(typed) : PointsWords.readHundredths(typed);
		return value.isPresent() ? value.getAsInt() : null;
	}

	/** Write a value of this line: "+2", "7.25". */
	public String words(int value) {
		return spoken(value).english();
	}

	/** The line in words: "element 3", "Composition". */
	public String words() {
		return spoken().english();
	}

	/** Say a value of this line, in French and Finnish with a decimal comma. */
	Sentence spoken(int value) {
		return isElement() ? Sentence.said(PointsWords.grade(value)) : Sentence.of("figure.points", value);
	}

	/** Say the line. */
	Sentence spoken() {
		return isElement() ? Sentence.of("note.place.element", this.element) : Sentence.ofTrade(this.component);
	}

	/** Write so that {@link #parse} reads it. */
	@Override
	public String toString() {
		return isElement() ? ELEMENT + this.element : COMPONENT + this.component;
	}

}
