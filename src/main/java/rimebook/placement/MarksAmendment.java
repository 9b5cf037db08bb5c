package rimebook.placement;

import rimebook.panels.SeatId;
import rimebook.performances.Amendment;
import rimebook.performances.PerformanceId;
import rimebook.tabulation.CardMarks;
import rimebook.wording.Sentence;

/**
 * The two marks of a judge's card.
 *
 * @param marks what it holds
 */
public record MarksAmendment(CardMarks marks) implements Amendment {

	/** Those marks on the card of that seat. */
	public static Amendment.SupposedChange<MarksAmendment> on(PerformanceId performance, SeatId seat, CardMarks marks) {
		return new Amendment.SupposedChange<>(performance, seat, new MarksAmendment(marks));
	}

	@Override
	public Sentence spokenPlace() {
		return Sentence.NONE;
	}

	@Override
	public Sentence spoken() {
		return Sentence.of("note.two-marks", Sentence.of("figure.decimal", this.marks.first()),
				Sentence.of("figure.decimal", this.marks.second()));
	}

}
