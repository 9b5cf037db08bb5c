package rimebook.stand.web;

import java.time.Instant;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.pages.RinkClock;
import rimebook.stand.StandView;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * The performance whose closed cards were opened again, with its seats.
 *
 * @param row the performance, {@code null} while there is none
 * @param missing what is missing before they can be closed again
 */
record ReopenedPart(StandView.@Nullable Row row, List<SeatsPart.SeatRow> seats,
		List<Sentence> missing) implements LivePart {

	static ReopenedPart of(StandView stand, RinkClock clock, Instant now) {
		StandView.Now reopened = stand.reopened();
		if (reopened == null) {
			return new ReopenedPart(null, List.of(), List.of());
		}
		return new ReopenedPart(reopened.row(),
				reopened.cards().seats().stream().map((seat) -> SeatsPart.SeatRow.of(seat, clock, now)).toList(),
				reopened.cards().missing());
	}

	/** What is missing in one line, empty when the cards can be closed. */
	public Sentence missingInWords() {
		return Series.withCommas(this.missing);
	}

}
