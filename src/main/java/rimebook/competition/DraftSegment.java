package rimebook.competition;

import org.jspecify.annotations.Nullable;

import rimebook.shared.Name;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.SegmentKind;

/**
 * A segment as the secretary writes it down.
 *
 * @param name up to 120 characters, unlike the other segments of the event
 * @param kind decides which mark breaks a tie on a judge's card
 * @param factor weight of its places in hundredths, 1 to 999: 50 is 0.5
 * @param programmeSeconds length of the programme, 30 seconds to 10 minutes
 * @param toleranceSeconds how far a programme may be longer, 0 to 120
 * @param shorterSeconds how far it may be shorter, 0 to 120; {@code null} where only the
 * longest is limited
 * @throws RuleViolationException naming the field that does not fit
 */
public record DraftSegment(String name, SegmentKind kind, int factor, int programmeSeconds, int toleranceSeconds,
		@Nullable Integer shorterSeconds) {

	private static final int MOST_TOLERANCE = 120;

	public DraftSegment {
		name = Name.required("name", name);
		checkFactor(factor);
		Required.number("programmeSeconds", programmeSeconds, 30, 600);
		Required.number("toleranceSeconds", toleranceSeconds, 0, MOST_TOLERANCE);
		if (shorterSeconds != null) {
			Required.number("shorterSeconds", shorterSeconds, 0, MOST_TOLERANCE);
		}
	}

	/** One whose programme may be as much shorter as longer. */
	public DraftSegment(String name, SegmentKind kind, int factor, int programmeSeconds, int toleranceSeconds) {
		this(name, kind, factor, programmeSeconds, toleranceSeconds, toleranceSeconds);
	}

	private static void checkFactor(int factor) {
		if (factor < 1 || factor > 999) {
			throw new RuleViolationException("field-out-of-range", "factor",
					"The field 'factor' must be from 0.01 to 9.99.");
		}
	}

}
