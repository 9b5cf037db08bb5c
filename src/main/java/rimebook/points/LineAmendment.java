package rimebook.points;

import rimebook.performances.Amendment;
import rimebook.wording.Sentence;

/**
 * A grade or a mark on one judge's card.
 *
 * @param element number of the element in the closed list, 0 for a component
 * @param component name of the component, empty for an element
 * @param value the grade, or the mark in hundredths
 */
public record LineAmendment(int element, String component, int value) implements Amendment {

	/** That value in that line. */
	public static LineAmendment of(PointsLine line, int value) {
		return new LineAmendment(line.element(), line.component(), value);
	}

	PointsLine line() {
		return new PointsLine(this.element, this.component);
	}

	@Override
	public Sentence spokenPlace() {
		return line().spoken();
	}

	@Override
	public Sentence spoken() {
		return line().spoken(this.value);
	}

}
