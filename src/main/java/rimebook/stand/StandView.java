package rimebook.stand;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.clock.ClockView;
import rimebook.competition.EventView;
import rimebook.competition.SegmentPlace;
import rimebook.competition.SegmentView;
import rimebook.panels.SeatPlace;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.RunningOrder;
import rimebook.remarks.RemarkReceipts;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * What the referee sees of a segment.
 *
 * @param at which segment it is
 * @param order the starting order with each performance's status; empty before opening
 * @param ice who skates and who comes next
 */
public record StandView(SegmentPlace at, List<Row> order, Ice ice) {

	/** The event that the segment belongs to. */
	public EventView event() {
		return this.at.event();
	}

	/** The segment. */
	public SegmentView segment() {
		return this.at.segment();
	}

	/** Tell whether the segment was opened. */
	public boolean open() {
		return !this.order.isEmpty();
	}

	/** One line of the running order. */
	public record Row(PerformanceView performance, String team, String spokenAs, String club) {
	}

	/**
	 * The performance on the ice, or the one opened again, with its panel.
	 *
	 * @param cards what has come of its cards
	 * @param clock the clock of the performance
	 */
	public record Now(Row row, Cards cards, List<RemarkReceipts.ToPanel> remarks, ClockView clock) {

		/** Tell whether the cards can be closed. */
		public boolean isComplete() {
			return this.cards.missing().isEmpty() && !this.clock.state().isUnderWay();
		}

		/**
		 * What has come of the cards of a performance.
		 *
		 * @param seats one a seat that has a card, in order
		 * @param missing what is missing before the cards can be closed
		 * @param spare what is missing of a substitute's card that closing does not wait
		 * for
		 * @param anySent whether anything was sent or the clock started, so that the call
		 * stands
		 */
		public record Cards(List<SeatCard> seats, List<Sentence> missing, List<Sentence> spare, boolean anySent) {

			/** What is missing in one line; empty for nothing. */
			public Sentence missingInWords() {
				return Series.withCommas(this.missing);
			}

		}

	}

	/**
	 * A seat and the card it has sent, if any.
	 *
	 * @param sent the card, if any
	 * @param tablet what was heard of the seat's tablet, to within a few seconds
	 * @param standing whether its card counts
	 */
	public record SeatCard(SeatPlace place, String official, Sent sent, SeatView.Tablet tablet, Standing standing) {

		/** Tell whether closing waits for its card. */
		public boolean counts() {
			return this.standing == Standing.COUNTS || this.standing == Standing.TAKEN_OVER;
		}

		/** Tell whether the seat has sent a card. */
		public boolean isThere() {
			return !this.sent.card().isEmpty();
		}

		/**
		 * The card that a seat has sent, if any.
		 *
		 * @param card the marks in a few words, empty without a card
		 */
		public record Sent(String card, @Nullable Instant receivedAt, int sequence) {

			static final Sent NOTHING = new Sent("", null, 0);

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
		return open() && this.ice.now() == null && this.ice.next() == null && this.ice.reopened() == null;
	}

	/** The next one waiting, or {@code null}. */
	public @Nullable Row next() {
		return this.ice.next();
	}

	/** The performance on the ice, or {@code null}. */
	public @Nullable Now now() {
		return this.ice.now();
	}

	/** The performance whose closed cards were opened again, or {@code null}. */
	public @Nullable Now reopened() {
		return this.ice.reopened();
	}

	/**
	 * Who skates, who is next, and whose cards are open again.
	 *
	 * @param now the performance on the ice, or {@code null}
	 * @param next the next one waiting, or {@code null}
	 * @param reopened the performance whose closed cards were opened again, or
	 * {@code null}
	 */
	public record Ice(@Nullable Now now, @Nullable Row next, @Nullable Now reopened) {
	}

}
