package rimebook.performances;

import org.jspecify.annotations.Nullable;

import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;

/**
 * The sentences with which a card is refused because another is there. They carry the
 * version that was received, so that the judge can choose between the two.
 */
public final class CardRefusals {

	private CardRefusals() {
	}

	/**
	 * Refuse a card whose identity was used before.
	 * @param received that card, {@code null} where it is not of this seat and team
	 */
	public static ConflictException contentDiffers(@Nullable Object received) {
		String code = "card-content-differs";
		String sentence = "A card with this identity was received before with other content; nothing was changed.";
		return (received != null) ? ConflictException.instead(code, sentence, received)
				: new ConflictException(code, sentence);
	}

	/** Refuse a change that the seat has sent already; it gets the card that counts. */
	public static ConflictException sequenceTaken(int newest, Object received) {
		return ConflictException.instead("card-sequence-taken",
				"For this seat a card was received meanwhile as change " + newest
						+ "; nothing was changed. Look at it, then send the next change as " + (newest + 1) + ".",
				received);
	}

	/** Refuse a card that was given to a list of called elements that never was. */
	public static RuleViolationException listUnknown(int sequence, int newest) {
		return RuleViolationException.ofField("list-unknown", "listSequence",
				"is " + sequence + "; the list of called elements has the versions 1 to " + newest + ".");
	}

}
