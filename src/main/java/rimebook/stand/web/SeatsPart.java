package rimebook.stand.web;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.pages.RinkClock;
import rimebook.stand.StandView;
import rimebook.wording.Sentence;

/** The panel's seats for the performance on the ice. */
record SeatsPart(List<SeatRow> seats) implements LivePart {

	static SeatsPart of(StandView stand, RinkClock clock, Instant now) {
		StandView.Now onIce = stand.now();
		if (onIce == null) {
			return new SeatsPart(List.of());
		}
		return new SeatsPart(onIce.cards().seats().stream().map((seat) -> SeatRow.of(seat, clock, now)).toList());
	}

	/**
	 * A seat as the referee sees it.
	 *
	 * @param standing whether its card counts
	 */
	record SeatRow(Sentence seat, String official, Card card, Tablet tablet, StandView.Standing standing) {

		/** A tablet asks every second or two; after so long it is out of reach. */
		private static final Duration SILENT = Duration.ofSeconds(20);

		static SeatRow of(StandView.SeatCard seat, RinkClock clock, Instant now) {
			String contact = contact(seat.tablet().lastHeardAt(), now);
			return new SeatRow(seat.place().spoken(), seat.official(),
					new Card(seat.sent().card(), clock.time(seat.sent().receivedAt()),
							Math.max(0, seat.sent().sequence() - 1)),
					new Tablet(contact,
							clock.time(
									contact.equals("silent") ? seat.tablet().lastHeardAt() : seat.tablet().pairedAt()),
							seat.tablet().waiting(), seat.tablet().faulty()),
					seat.standing());
		}

		private static String contact(@Nullable Instant lastHeard, Instant now) {
			if (lastHeard == null) {
				return "never";
			}
			return lastHeard.isBefore(now.minus(SILENT)) ? "silent" : "heard";
		}

		/** Tell whether closing waits for its card. */
		public boolean counts() {
			return this.standing == StandView.Standing.COUNTS || this.standing == StandView.Standing.TAKEN_OVER;
		}

		/** Tell whether the card is there. */
		public boolean hasCard() {
			return !this.card.marks().isEmpty();
		}

		/**
		 * The card that a seat has sent.
		 *
		 * @param marks the marks received, empty while the card is missing
		 * @param received when, in the rink's time
		 * @param changes how often the judge has changed the card
		 */
		record Card(String marks, String received, int changes) {
		}

		/**
		 * What is heard of the seat's tablet.
		 *
		 * @param contact whether the tablet is heard: heard, silent or never
		 * @param since when it joined, or while it is silent when it was last heard
		 * @param waiting how many cards the tablet says it has not been able to hand over
		 * @param faulty whether the tablet says that its page could not show everything
		 */
		record Tablet(String contact, String since, int waiting, boolean faulty) {
		}

	}

}
