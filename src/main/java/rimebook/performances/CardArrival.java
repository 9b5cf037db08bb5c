package rimebook.performances;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.wording.Sentence;

/**
 * A judge's card that a tablet sends, whatever stands on it. The same card sent again
 * gets the same answer; the same identity with other content is refused, and so is a
 * change that the seat has sent already. Those refusals carry the version that was
 * received, so that the judge can choose between the two.
 *
 * @param seat of the tablet
 * @param sequence 1 for the first card of a performance, one more for each change, 1000
 * at most
 * @param told how a version is told to its tablet
 */
public record CardArrival<C extends JudgesCard>(PerformanceId performance, SeatId seat, int sequence,
		Function<C, Object> told) {

	private static final int MOST_CHANGES = 1000;

	public CardArrival {
		Required.number("sequence", sequence, 1, MOST_CHANGES);
	}

	/**
	 * Give the first answer again.
	 * @param sent what was received under the same identity
	 * @param same whether that is this very card
	 * @throws ConflictException {@code card-content-differs} if it is another; of another
	 * seat's or team's card nothing is told
	 */
	public CardBook.Acknowledgement again(C sent, boolean same) {
		if (same) {
			return sent.acknowledged();
		}
		String code = "card-content-differs";
		Sentence sentence = Sentence.of("performances.card-content-differs");
		throw sent.isOf(this.performance, this.seat) ? ConflictException.instead(code, sentence, this.told.apply(sent))
				: new ConflictException(code, sentence);
	}

	/**
	 * The seat that sends it, of those whose cards are taken.
	 * @throws NotFoundException {@code performance-not-of-seat}
	 */
	public SeatView sender(List<SeatView> senders) {
		return senders.stream()
			.filter((sender) -> sender.id().equals(this.seat))
			.findFirst()
			.orElseThrow(CardArrival::notOfSeat);
	}

	/** Say that a seat has no card of a performance. */
	public static NotFoundException notOfSeat() {
		return new NotFoundException("performance-not-of-seat", Sentence.of("performances.not-of-seat"));
	}

	/**
	 * Refuse a change that the seat has sent already.
	 * @param newest the card that counts
	 * @throws ConflictException {@code card-sequence-taken}
	 */
	public void requireNewerThan(Optional<C> newest) {
		newest.filter((card) -> this.sequence <= card.sequence()).ifPresent((card) -> {
			throw ConflictException.instead("card-sequence-taken",
					Sentence.of("performances.card-sequence-taken", card.sequence(), card.sequence() + 1),
					this.told.apply(card));
		});
	}

	/**
	 * Its line on the record.
	 * @param sender the seat that sends it
	 * @param before the card that counted in words, empty for none
	 * @param now this card in words
	 */
	public AuditedChange line(SeatView sender, Optional<String> before, String now, Actor actor) {
		return AuditedChange.of(actor, "performance", this.performance, "card.received")
			.from(before.map((words) -> words(sender, words)).orElse(""), words(sender, now));
	}

	/**
	 * As {@link #line}, of a card that was received before and was lost with the service.
	 * @param returned what the tablet says of it
	 */
	public AuditedChange returnedLine(SeatView sender, Optional<String> before, String now, Actor actor,
			ReturnedCard returned) {
		return AuditedChange.of(actor, "performance", this.performance, "card.returned")
			.from(before.map((words) -> words(sender, words)).orElse(""), words(sender, now))
			.because("first received at " + returned.receivedAt()
					+ " by its tablet's word, lost with the service of then");
	}

	private static String words(SeatView sender, String marks) {
		return sender.label() + ": " + marks;
	}

}
