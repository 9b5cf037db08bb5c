package rimebook.points;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.Acknowledgement;
import rimebook.performances.CardOrigin;
import rimebook.performances.CardReceived;
import rimebook.performances.CardRefusals;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceView;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;

/**
 * Takes judges' cards in points judging from their tablets. A card is acknowledged only
 * after its row is committed; the same card sent again gets the same answer; the same
 * identity with other content is refused.
 */
@Service
public class PointsSubmission {

	private static final int MOST_CHANGES = 1000;

	private final PerformanceRegister performances;

	private final PointsCardRepository cards;

	private final PointsBook book;

	private final Clock clock;

	private final ApplicationEventPublisher events;

	PointsSubmission(PerformanceRegister performances, PointsCardRepository cards, PointsBook book, Clock clock,
			ApplicationEventPublisher events) {
		this.performances = performances;
		this.cards = cards;
		this.book = book;
		this.clock = clock;
		this.events = events;
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
	public Acknowledgement submit(SubmitPointsCard card, SeatId seat, Actor actor) {
		Required.number("sequence", card.sequence(), 1, MOST_CHANGES);
		PerformanceView performance = this.performances.hold(card.performance());
		Optional<PointsCard> sent = this.cards.findById(card.id());
		if (sent.isPresent()) {
			return repeated(sent.get(), card, seat);
		}
		return keep(card, performance, countingSeat(performance, seat), actor);
	}

	private static Acknowledgement repeated(PointsCard sent, SubmitPointsCard card, SeatId seat) {
		if (!sent.isSameAs(card, seat)) {
			throw CardRefusals
				.contentDiffers(sent.isOf(card.performance(), seat) ? ReceivedPointsCard.of(sent.own()) : null);
		}
		return sent.acknowledged();
	}

	private Acknowledgement keep(SubmitPointsCard card, PerformanceView performance, SeatView seat, Actor actor) {
		Optional<CalledListView> list = this.book.lists(performance.id()).givenTo(card).map(CalledList::view);
		PointsCardCheck check = new PointsCardCheck(this.book.rules(performance.segment()), list);
		PerformanceRegister.requireOnIce(performance);
		check.require(card.marks());
		Optional<PointsCard> before = newest(performance.id(), seat.id());
		requireNewer(card, before);
		PointsCard kept = new PointsCard(card.id(), performance.id(), seat.id(), card.sequence(),
				list.map(CalledListView::sequence).orElse(0), card.marks(), CardOrigin.JUDGE, this.clock.instant());
		this.cards.save(kept);
		this.events.publishEvent(
				new CardReceived(performance.id(), performance.segment(), line(kept, before, seat, check, actor)));
		return kept.acknowledged();
	}

	private static void requireNewer(SubmitPointsCard card, Optional<PointsCard> before) {
		if (before.isPresent() && card.sequence() <= before.get().sequence()) {
			throw CardRefusals.sequenceTaken(before.get().sequence(), ReceivedPointsCard.of(before.get().own()));
		}
	}

	private SeatView countingSeat(PerformanceView performance, SeatId id) {
		return this.book.senders(performance.segment())
			.stream()
			.filter((seat) -> seat.id().equals(id))
			.findFirst()
			.orElseThrow(() -> new NotFoundException("performance-not-of-seat",
					"That performance is not judged by this seat."));
	}

	private Optional<PointsCard> newest(PerformanceId performance, SeatId seat) {
		return this.book.card(performance, seat);
	}

	private static AuditedChange line(PointsCard card, Optional<PointsCard> before, SeatView seat,
			PointsCardCheck check, Actor actor) {
		List<CalledElement> elements = check.elements();
		return AuditedChange.of(actor, "performance", card.performance(), "card.received")
			.from(before.map((old) -> words(seat, old, elements)).orElse(""), words(seat, card, elements));
	}

	private static String words(SeatView seat, PointsCard card, List<CalledElement> elements) {
		return seat.label() + ": " + PointsWords.of(card.marks(), elements);
	}

	/** Return the newest card of each seat for a performance. */
	@Transactional(readOnly = true)
	public Map<SeatId, PointsCardView> ofPerformance(PerformanceId performance) {
		return this.book.cards(performance)
			.values()
			.stream()
			.collect(Collectors.toMap(PointsCard::seat, PointsCard::view));
	}

}
