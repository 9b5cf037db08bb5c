package rimebook.points;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

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

/**
 * Takes judges' cards in points judging from their tablets. A card is acknowledged only
 * after its row is committed; the same card sent again gets the same answer; the same
 * identity with other content is refused.
 */
@Service
public class PointsSubmission {

	private final PerformanceRegister performances;

	private final PointsCardRepository cards;

	private final PointsBook book;

	private final ReturnedCard.EarlierLives lives;

	private final Acts acts;

	PointsSubmission(PerformanceRegister performances, PointsCardRepository cards, PointsBook book,
			ReturnedCard.EarlierLives lives, Acts acts) {
		this.lives = lives;
		this.acts = acts;
		this.performances = performances;
		this.cards = cards;
		this.book = book;
	}

	/**
	 * Take a card from the tablet of a seat, or a changed one.
	 * @return the word that it is kept; for a repetition the first answer again
	 * @throws rimebook.shared.RuleViolationException naming the field, such as
	 * {@code components[Composition]}: no elements called yet, a grade or mark missing or
	 * out of range, an element that is not in the list it was given to, no such list
	 * @throws ConflictException {@code card-content-differs} if the identity was used for
	 * another card, {@code card-sequence-taken} if the seat has sent that change already,
	 * {@code card-closed} or {@code performance-not-open} if marks are not taken now
	 * @throws NotFoundException if there is no such performance for this seat, or its
	 * event is not judged by points
	 */
	@Transactional
	public CardBook.Acknowledgement submit(SubmitPointsCard card, SeatId seat, Actor actor) {
		return take(card, seat, actor, null);
	}

	/**
	 * Take a card back that was acknowledged before the service was started from a copy,
	 * with its first time of receipt. It is taken while its performance waits, too: the
	 * call may have been lost with it. A card to a list of elements that was lost is
	 * refused as any other.
	 * @return the word that it is kept; the first answer again if it was never lost
	 * @throws ConflictException as {@link #submit}, and {@code card-of-another-day} if it
	 * is of no earlier life of this service
	 */
	@Transactional
	public CardBook.Acknowledgement takeBack(SubmitPointsCard card, ReturnedCard returned, SeatId seat, Actor actor) {
		return take(card, seat, actor, returned);
	}

	private CardBook.Acknowledgement take(SubmitPointsCard card, SeatId seat, Actor actor,
			@Nullable ReturnedCard returned) {
		CardArrival<PointsCard> arrival = new CardArrival<>(card.performance(), seat, card.sequence(),
				(sent) -> ReceivedPointsCard.of(sent.own()));
		PerformanceView performance = this.performances.hold(card.performance());
		Optional<PointsCard> sent = this.cards.findById(card.id());
		if (sent.isPresent()) {
			return arrival.again(sent.get(), sent.get().isSameAs(card, seat));
		}
		return keep(card, arrival, new Reception(performance, actor, returned));
	}

	private CardBook.Acknowledgement keep(SubmitPointsCard card, CardArrival<PointsCard> arrival, Reception reception) {
		PerformanceView performance = reception.performance();
		SeatView sender = arrival.sender(this.book.senders(performance.segment()));
		Optional<CalledListView> list = this.book.lists(performance.id()).givenTo(card).map(CalledList::view);
		PointsCardCheck check = new PointsCardCheck(this.book.rules(performance.segment()), list);
		reception.requireOpen(this.lives);
		check.require(card.marks());
		Optional<PointsCard> before = this.book.card(performance.id(), sender.id());
		arrival.requireNewerThan(before);
		PointsCard kept = new PointsCard(card.id(), performance.id(), sender.id(), card.sequence(),
				new PointsCard.Given(list.map(CalledListView::sequence).orElse(0), card.marks()),
				new PointsCard.Receipt(CardOrigin.JUDGE, reception.at(this.acts.now())));
		this.cards.save(kept);
		this.acts.publish(new PerformanceEvent.CardReceived(performance.id(), performance.segment(),
				reception.line(arrival, sender, before.map((old) -> PointsWords.of(old.marks(), check.elements())),
						PointsWords.of(kept.marks(), check.elements()))));
		return kept.acknowledged();
	}

	/** Return the newest card of each seat for a performance. */
	@Transactional(readOnly = true)
	public Map<SeatId, PointsCardView> ofPerformance(PerformanceId performance) {
		return this.book.cards(performance)
			.values()
			.stream()
			.collect(Collectors.toMap(PointsCard::seat, PointsCard::view));
	}

	/**
	 * A judge's card in points judging.
	 *
	 * @param id made by the device, the same for every repetition of this very card
	 * @param performance whose card it is
	 * @param sequence 1 for the first card of a performance, one more for each change
	 * @param marks a grade for each element that counts and a mark for each component
	 * @param listSequence the version of the list of called elements that the grades were
	 * given to, {@code null} for the newest when the card is received
	 */
	public record SubmitPointsCard(UUID id, PerformanceId performance, int sequence, PointsMarks marks,
			@Nullable Integer listSequence) {

		/** A card given to the newest list of elements. */
		public SubmitPointsCard(UUID id, PerformanceId performance, int sequence, PointsMarks marks) {
			this(id, performance, sequence, marks, null);
		}

		boolean isGivenTo(int list) {
			return this.listSequence == null || this.listSequence == list;
		}

	}

	/**
	 * The version of a seat's card in points judging that the service has, as its tablet
	 * reads it.
	 *
	 * @param sequence its version, from 1
	 * @param grades by the identity of the element
	 * @param components marks with two decimals by the name of the component
	 * @param receivedAt when it was received, UTC
	 */
	public record ReceivedPointsCard(int sequence, Map<UUID, Integer> grades, Map<String, BigDecimal> components,
			Instant receivedAt) {

		/** Write a card with decimals. */
		public static ReceivedPointsCard of(PointsTasks.PointsTask.OwnCard card) {
			Map<String, BigDecimal> components = new LinkedHashMap<>();
			card.marks().components().forEach((name, mark) -> components.put(name, BigDecimal.valueOf(mark, 2)));
			return new ReceivedPointsCard(card.sequence(), card.marks().grades(), components, card.receivedAt());
		}

	}

	/**
	 * The version of a judge's card that counts now, in points judging.
	 *
	 * @param sequence its version, from 1
	 * @param receivedAt when, UTC
	 * @param origin whether the seat's tablet sent it or it was keyed in from paper
	 */
	public record PointsCardView(SeatId seat, PointsMarks marks, int sequence, Instant receivedAt, CardOrigin origin) {
	}

}
