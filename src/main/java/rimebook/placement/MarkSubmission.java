package rimebook.placement;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.EventView;
import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.CardBook;
import rimebook.performances.CardOrigin;
import rimebook.performances.CardRefusals;
import rimebook.performances.PerformanceEvent;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.tabulation.CardMarks;

/**
 * Takes judges' cards. A card is acknowledged only after its row is committed; the same
 * card sent again gets the same answer; the same identity with other content is refused.
 */
@Service
public class MarkSubmission {

	private static final int MOST_CHANGES = 1000;

	private final PerformanceRegister performances;

	private final CardSubmissionRepository submissions;

	private final PanelCards cards;

	private final Panels panels;

	private final Acts acts;

	MarkSubmission(PerformanceRegister performances, CardSubmissionRepository submissions, PanelCards cards,
			Panels panels, Acts acts) {
		this.acts = acts;
		this.performances = performances;
		this.submissions = submissions;
		this.cards = cards;
		this.panels = panels;
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
		Required.number("sequence", card.sequence(), 1, MOST_CHANGES);
		PerformanceView performance = this.performances.hold(card.performance());
		Optional<CardSubmission> sent = this.submissions.findById(card.id());
		if (sent.isPresent()) {
			return repeated(sent.get(), card, seat);
		}
		EventView event = this.cards.eventOf(performance.segment());
		SeatView sender = sender(event, performance, seat);
		this.cards.requirePlacement(event);
		PerformanceRegister.requireOnIce(performance);
		this.cards.requireMarksTaken(event, card.marks());
		return keep(card, performance, sender, actor);
	}

	private static CardBook.Acknowledgement repeated(CardSubmission sent, SubmitCard card, SeatId seat) {
		if (!sent.isSameAs(card, seat)) {
			throw CardRefusals.contentDiffers(sent.isOf(card.performance(), seat) ? ReceivedCard.of(sent) : null);
		}
		return sent.acknowledged();
	}

	private CardBook.Acknowledgement keep(SubmitCard card, PerformanceView performance, SeatView seat, Actor actor) {
		Optional<CardSubmission> before = Optional
			.ofNullable(this.cards.newestOf(seat.id(), List.of(performance)).get(performance.id().value()));
		requireNewer(card, before);
		CardSubmission kept = new CardSubmission(card.id(), performance.id(), seat.id(), card.sequence(), card.marks(),
				CardOrigin.JUDGE, this.acts.now());
		this.submissions.save(kept);
		this.acts.publish(new PerformanceEvent.CardReceived(performance.id(), performance.segment(),
				line(kept, before, seat, actor)));
		return kept.acknowledged();
	}

	private static void requireNewer(SubmitCard card, Optional<CardSubmission> before) {
		if (before.isPresent() && card.sequence() <= before.get().sequence()) {
			throw CardRefusals.sequenceTaken(before.get().sequence(), ReceivedCard.of(before.get()));
		}
	}

	private SeatView sender(EventView event, PerformanceView performance, SeatId id) {
		return this.cards.senders(event, performance.segment())
			.stream()
			.filter((seat) -> seat.id().equals(id))
			.findFirst()
			.orElseThrow(() -> new NotFoundException("performance-not-of-seat",
					"That performance is not judged by " + this.panels.seat(id).label() + "."));
	}

	private static AuditedChange line(CardSubmission card, Optional<CardSubmission> before, SeatView seat,
			Actor actor) {
		return AuditedChange.of(actor, "performance", card.performance(), "card.received")
			.from(before.map((old) -> words(seat, old)).orElse(""), words(seat, card));
	}

	private static String words(SeatView seat, CardSubmission card) {
		return seat.label() + ": " + MarkWords.of(card.marks());
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
			CardBook.Acknowledgement known = card.acknowledged();
			return new ReceivedCard(card.sequence(), MarkWords.decimal(card.marks().first()),
					MarkWords.decimal(card.marks().second()), known.receivedAt());
		}

	}

}
