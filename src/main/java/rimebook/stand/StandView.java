package rimebook.stand;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.clock.ClockView;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.RunningOrder;
import rimebook.remarks.RemarkReceipts;

/**
 * What the referee sees of a segment.
 *
 * @param open whether the segment was opened
 * @param order the starting order with each performance's status; empty before opening
 * @param now the performance on the ice, or {@code null}
 * @param next the next one waiting, or {@code null}
 * @param reopened the performance whose closed cards were opened again, or {@code null}
 */
public record StandView(EventView event, SegmentView segment, boolean open, List<Row> order, @Nullable Now now,
		@Nullable Row next, @Nullable Now reopened) {

	/** One line of the running order. */
	public record Row(PerformanceView performance, String team, String spokenAs, String club) {
	}

	/**
	 * The performance on the ice, or the one opened again, with its panel.
	 *
	 * @param seats one a seat that has a card, in order
	 * @param missing what is missing before the cards can be closed, in words
	 * @param spare what is missing of a substitute's card that closing does not wait for,
	 * in words
	 * @param anySent whether anything was sent or the clock started, so that the call
	 * stands
	 * @param clock the clock of the performance
	 */
	public record Now(Row row, List<SeatCard> seats, List<String> missing, List<String> spare, boolean anySent,
			List<RemarkReceipts.ToPanel> remarks, ClockView clock) {

		/** Tell whether the cards can be closed. */
		public boolean isComplete() {
			return this.missing.isEmpty() && !this.clock.state().isUnderWay();
		}

	}

	/**
	 * A seat and the card it has sent, if any.
	 *
	 * @param card the marks in a few words, empty without a card
	 * @param pairedAt when the seat's tablet joined, {@code null} while none has
	 * @param lastHeardAt when it last spoke, to within a few seconds
	 * @param waiting how many cards the tablet says it has not been able to hand over
	 * @param faulty whether the tablet says that its page could not show everything
	 * @param standing whether its card counts
	 */
	public record SeatCard(String label, String official, String card, @Nullable Instant receivedAt, int sequence,
			@Nullable Instant pairedAt, @Nullable Instant lastHeardAt, int waiting, boolean faulty, Standing standing) {

		/** Tell whether closing waits for its card. */
		public boolean counts() {
			return this.standing == Standing.COUNTS || this.standing == Standing.TAKEN_OVER;
		}

		/** Tell whether the seat has sent a card. */
		public boolean isThere() {
			return !this.card.isEmpty();
		}

	}

	/** Whether a seat's card counts. */
	public enum Standing {

		/** A judge's, as drawn. */
		COUNTS,

		/** The substitute's, in place of a judge's. */
		TAKEN_OVER,

		/** A judge's, in whose place the substitute's counts. */
		REPLACED,

		/** A judge's, left out of the segment. */
		LEFT_OUT,

		/** The substitute's, as long as it is not needed. */
		SUBSTITUTE

	}

	/**
	 * The last performance whose cards were closed, which are the only ones that can be
	 * opened again; {@code null} for none.
	 */
	public @Nullable Row lastClosed() {
		return this.order.stream()
			.filter((row) -> row.performance().course().closedAt() != null)
			.max(Comparator.comparing((Row row) -> Objects.requireNonNull(row.performance().course().closedAt()))
				.thenComparing((row) -> row.performance().startNumber()))
			.filter((row) -> row.performance().status() == PerformanceStatus.CLOSED)
			.orElse(null);
	}

	/** Tell whether a team waits although a later number was called. */
	public boolean isPassedOver(Row row) {
		return RunningOrder.isPassedOver(row.performance(), this.order.stream().map(Row::performance).toList());
	}

	/** Tell whether every performance is done. */
	public boolean isFinished() {
		return this.open && this.now == null && this.next == null && this.reopened == null;
	}

}
