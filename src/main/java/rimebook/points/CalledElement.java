package rimebook.points;

import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.points.ElementCode;
import rimebook.tabulation.points.JudgedElement;
import rimebook.wording.Sentence;

/**
 * An element of a programme as it was called.
 *
 * @param id its identity, the same in every version of the list
 * @param number its place in the programme, from 1
 * @param code as called, such as {@code I4+pi3}
 * @param worth whether it counts
 * @param base in place of the base value in the table, in hundredths; {@code null} where
 * the table holds
 * @param review whether the technical panel still looks at it again
 */
public record CalledElement(UUID id, int number, String code, JudgedElement.ElementWorth worth, @Nullable Integer base,
		boolean review) {

	/** Tell whether judges have to grade it. */
	public boolean counts() {
		return this.worth == JudgedElement.ElementWorth.COUNTS;
	}

	/** The element itself; grades given to it stand while it stays the same. */
	public String element() {
		return ElementCode.elementOf(this.code);
	}

	boolean isSameElementAs(CalledElement other) {
		return element().equals(other.element());
	}

	/** The element as people point at it: "element 3 (ME4)". */
	Sentence spoken() {
		return Sentence.of("points.element", this.number, this.code);
	}

	/** The same in English, as on the record. */
	String label() {
		return spoken().english();
	}

	/** Write as on the record: "3 ME4", "5 AC2 (no value)", "2 B4 (base 3.50)". */
	String inWords() {
		String base = (this.base != null) ? " (base " + PointsWords.of(this.base) + ")" : "";
		return this.number + " " + this.code + (counts() ? base : " (" + this.worth.words() + ")")
				+ (this.review ? " (under review)" : "");
	}

}
