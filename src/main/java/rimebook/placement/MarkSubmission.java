package rimebook.placement;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.EventView;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.CardArrival;
import rimebook.performances.CardBook;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceEvent;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.performances.Reception;
import rimebook.performances.ReturnedCard;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.tabulation.CardMarks;

/**
 * Takes judges' cards. A card is acknowledged only after its row is committed; the same
 * card sent again gets the same answer; the same identity with other content is refused.
 */
@Service
public class MarkSubmission {

	private final PerformanceRegister performances;

	private final CardSubmissionRepository submissions;

	private final PanelCards cards;

	private final ReturnedCard.EarlierLives lives;

	private final Acts acts;

	MarkSubmission(PerformanceRegister performances, CardSubmissionRepository submissions, PanelCards cards,
			ReturnedCard.EarlierLives lives, Acts acts) {
		this.lives = lives;
		this.acts = acts;
		this.performances = performances;
		this.submissions = submissions;
		this.cards = cards;
	}

	/**
	 * Take a card of a seat, or a changed one.
	 * @return the word that it is kept; for a repetition the first answer again
	 * @throws ConflictException {@code card-content-differs} if the identity was used for
	 * another card, {@code card-sequence-taken} if the seat has sent that change already,
	 * {@code card-closed} or {@code performance-not-open} if marks are not taken now
	 * @throws rimebook.shared.RuleViolationException {@code zero-mark} for 0.0 where it
	 * means "not skated"
	 * @throws NotFoundException if there is no such performance for this seat
	 */
	@Transactional
	public CardBook.Acknowledgement submit(SubmitCard card, SeatId seat, Actor actor) {
		return take(card, seat, actor, null);
	}

	/**
	 * Take a card back that was acknowledged before the service was started from a copy,
	 * with its first time of receipt. It is taken while its performance waits, too: the
	 * call may have been lost with it.
	 * @return the word that it is kept; the first answer again if it was never lost
	 * @throws ConflictException as {@link #submit}, and {@code card-of-another-day} if it
	 * is of no earlier life of this service
	 */
	@Transactional
	public CardBook.Acknowledgement takeBack(SubmitCard card, ReturnedCard returned, SeatId seat, Actor actor) {
		return take(card, seat, actor, returned);
	}

	private CardBook.Acknowledgement take(SubmitCard card, SeatId seat, Actor actor, @Nullable ReturnedCard returned) {
		CardArrival<CardSubmission> arrival = new CardArrival<>(card.performance(), seat, card.sequence(),
				ReceivedCard::of);
		PerformanceView performance = this.performances.hold(card.performance());
		Optional<CardSubmission> sent = this.submissions.findById(card.id());
		if (sent.isPresent()) {
			return arrival.again(sent.get(), sent.get().isSameAs(card, seat));
		}
		return keep(card, arrival, new Reception(performance, actor, returned));
	}

	private CardBook.Acknowledgement keep(SubmitCard card, CardArrival<CardSubmission> arrival, Reception reception) {
		PerformanceView performance = reception.performance();
		EventView event = this.cards.eventOf(performance.segment());
		SeatView sender = arrival.sender(this.cards.senders(event, performance.segment()));
		this.cards.requirePlacement(event);
		reception.requireOpen(this.lives);
		this.cards.requireMarksTaken(event, card.marks());
		Optional<CardSubmission> before = Optional
			.ofNullable(this.cards.newestOf(sender.id(), List.of(performance)).get(performance.id().value()));
		arrival.requireNewerThan(before);
		CardSubmission kept = new CardSubmission(card.id(), performance.id(), sender.id(), card.sequence(),
				card.marks(), new CardSubmission.Receipt(CardOrigin.JUDGE, reception.at(this.acts.now())));
		this.submissions.save(kept);
		this.acts.publish(new PerformanceEvent.CardReceived(performance.id(), performance.segment(), reception
			.line(arrival, sender, before.map((old) -> MarkWords.of(old.marks())), MarkWords.of(kept.marks()))));
		return kept.acknowledged();
	}

	/**
	 * A judge's card as the device sends it.
	 *
	 * @param id made by the device, the same for every repetition of this very card
	 * @param performance whose card it is
	 * @param sequence 1 for the first card of a performance, one more for each change
	 * @param marks the two marks
	 */
	public record SubmitCard(UUID id, PerformanceId performance, int sequence, CardMarks marks) {
	}

	/**
	 * The version of a seat's card that the service has, told to the tablet whose other
	 * version it refuses.
	 *
	 * @param sequence its version, from 1
	 * @param first the first mark with one decimal
	 * @param second the second mark with one decimal
	 * @param receivedAt when it was received, UTC
	 */
	public record ReceivedCard(int sequence, BigDecimal first, BigDecimal second, Instant receivedAt) {

		static ReceivedCard of(CardSubmission card) {
			return new ReceivedCard(card.sequence(), MarkWords.decimal(card.marks().first()),
					MarkWords.decimal(card.marks().second()), card.receivedAt());
		}

	}

}
