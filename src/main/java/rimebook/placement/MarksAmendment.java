package rimebook.placement;

import rimebook.panels.SeatId;
import rimebook.performances.Amendment;
import rimebook.performances.PerformanceId;
import rimebook.tabulation.CardMarks;

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
	public String place() {
		return "";
	}

	@Override
	public String words() {
		return MarkWords.of(this.marks);
	}

}
