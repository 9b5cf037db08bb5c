package rimebook.placement;

import java.time.Clock;
import java.util.Optional;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.performances.CardCorrected;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Ids;
import rimebook.shared.NotFoundException;
import rimebook.tabulation.CardMarks;

/**
 * Puts a corrected version on top of a closed card. Who may ask for it and who approves
 * it is decided by protests; here the old version stays for ever.
 */
@Service
public class CardCorrection {

	private final PerformanceRegister performances;

	private final CardSubmissionRepository submissions;

	private final PanelCards cards;

	private final Panels panels;

	private final Ids ids;

	private final Clock clock;

	private final ApplicationEventPublisher events;

	CardCorrection(PerformanceRegister performances, CardSubmissionRepository submissions, PanelCards cards,
			Panels panels, Ids ids, Clock clock, ApplicationEventPublisher events) {
		this.performances = performances;
		this.submissions = submissions;
		this.cards = cards;
		this.panels = panels;
		this.ids = ids;
		this.clock = clock;
		this.events = events;
	}

	/**
	 * Return the card that counts now for a seat of a closed performance.
	 * @throws ConflictException {@code card-not-closed} if the judge can still change it
	 */
	@Transactional(readOnly = true)
	public CardView closedCard(PerformanceId performance, SeatId seat) {
		return newest(this.performances.findClosed(performance), seat).view();
	}

	/**
	 * Put the new marks in as the card's next version.
	 * @param expected the marks the correction was decided on
	 * @param corrected the marks that count from now on
	 * @param reason why, for the record
	 * @param actor who approved it
	 * @throws ConflictException if the card is not closed, or no longer holds the
	 * expected marks
	 * @throws rimebook.shared.RuleViolationException {@code zero-mark} for 0.0 where it
	 * means "not skated"
	 */
	@Transactional
	public void correct(PerformanceId id, SeatId seat, CardMarks expected, CardMarks corrected, String reason,
			Actor actor) {
		PerformanceView performance = this.performances.holdClosed(id);
		CardSubmission old = newest(performance, seat);
		if (!old.marks().equals(expected)) {
			throw ConflictException.stale("card");
		}
		this.cards.requireMarksTaken(this.cards.eventOf(performance.segment()), corrected);
		this.submissions.save(new CardSubmission(this.ids.next(), id, seat, old.sequence() + 1, corrected,
				CardOrigin.CORRECTION, this.clock.instant()));
		String label = this.panels.seat(seat).label() + ": ";
		String words = label + MarkWords.of(expected) + " became " + MarkWords.of(corrected);
		this.events.publishEvent(new CardCorrected(id, performance.segment(), performance.entry(), words,
				AuditedChange.of(actor, "performance", id, "card.corrected")
					.from(label + MarkWords.of(expected), label + MarkWords.of(corrected))
					.because(reason)));
	}

	private CardSubmission newest(PerformanceView performance, SeatId seat) {
		this.cards.requirePlacement(this.cards.eventOf(performance.segment()));
		return Optional.ofNullable(this.cards.newestOf(performance.id()).get(seat))
			.orElseThrow(() -> NotFoundException.of("card", seat));
	}

}
