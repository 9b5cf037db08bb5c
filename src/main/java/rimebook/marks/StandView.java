package rimebook.marks;

import java.time.Instant;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.tabulation.CardMarks;

/**
 * What the referee sees of a segment.
 *
 * @param open whether the segment was opened
 * @param order the starting order with each performance's status; empty before opening
 * @param now the performance on the ice, or {@code null}
 * @param next the next one waiting, or {@code null}
 */
public record StandView(EventView event, SegmentView segment, boolean open, List<Row> order, @Nullable Now now,
		@Nullable Row next) {

	/** One line of the running order. */
	public record Row(PerformanceView performance, String team, String spokenAs, String club) {
	}

	/**
	 * The performance on the ice with its panel.
	 *
	 * @param seats one a counting seat, in order
	 */
	public record Now(Row row, List<SeatCard> seats, List<RemarkView> remarks) {

		/** Tell whether every seat has sent a card. */
		public boolean isComplete() {
			return missing() == 0;
		}

		/** Count the seats without a card. */
		public long missing() {
			return this.seats.stream().filter((seat) -> seat.marks() == null).count();
		}

	}

	/** A seat and the card it has sent, if any. */
	public record SeatCard(String label, String official, @Nullable CardMarks marks, @Nullable Instant receivedAt,
			int sequence, @Nullable Instant lastHeardAt) {
	}

	/** Tell whether every performance is done. */
	public boolean isFinished() {
		return this.open && this.now == null && this.next == null;
	}

}
