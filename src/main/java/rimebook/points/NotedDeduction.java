package rimebook.points;

import java.time.Instant;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import rimebook.clock.ClockView;

/**
 * A deduction from the table of the rule set.
 *
 * @param item its short name in the table
 * @param count how many, or how much, in the unit of the item
 * @param notedBy who noted it
 * @param notedAt when, UTC; {@code null} where it was noted before that was kept
 * @param touch the touch of the clock that it was taken for, as
 * {@link ClockView.ClockFinding#since}, UTC; {@code null} for whatever the clock did not
 * find
 */
public record NotedDeduction(String item, int count, String notedBy, @Nullable Instant notedAt,
		@Nullable Instant touch) {

	/** Tell whether it was taken for one of these touches of the clock. */
	boolean isTakenFor(Set<Instant> touches) {
		return this.touch != null && touches.contains(this.touch);
	}

	boolean isSameAs(DeductionNotes.NoteDeductions.Item other) {
		return this.item.equals(other.item()) && this.count == other.count();
	}

	/** The same without the time. */
	NotedDeduction untimed() {
		return new NotedDeduction(this.item, this.count, this.notedBy, null, this.touch);
	}

}
