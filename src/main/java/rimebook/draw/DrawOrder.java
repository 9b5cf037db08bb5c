package rimebook.draw;

import rimebook.competition.SegmentId;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;

/**
 * The referee's order to draw a segment.
 *
 * @param segment what is drawn
 * @param method how; the first segment of an event takes {@link DrawMethod#WHOLE_FIELD}
 * only
 * @param seed the text that decides, up to 200 characters; blank to have one made
 * @param groupMaximum the most that may share a warm-up group, 1 to 99
 * @param reason why a drawn order is drawn again, up to 500 characters; may stay empty
 * for the first draw of a segment
 * @throws rimebook.shared.RuleViolationException naming the field that does not fit
 */
public record DrawOrder(SegmentId segment, DrawMethod method, String seed, int groupMaximum, String reason) {

	public DrawOrder {
		seed = oneLine(Required.optional("seed", seed, 200));
		groupMaximum = Required.number("groupMaximum", groupMaximum, 1, 99);
		reason = Required.optional("reason", reason, 500);
	}

	/** A seed is read aloud and typed into a shell: no tabs, no line breaks. */
	private static String oneLine(String seed) {
		if (seed.chars().anyMatch(Character::isISOControl)) {
			throw new RuleViolationException("field-not-text", "seed",
					"The field 'seed' must be one line of plain text, without tabs.");
		}
		return seed;
	}

}
