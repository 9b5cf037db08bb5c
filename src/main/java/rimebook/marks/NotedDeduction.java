package rimebook.marks;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

/**
 * A deduction from the table of the rule set.
 *
 * @param item its short name in the table
 * @param count how many, or how much, in the unit of the item
 * @param notedBy who noted it
 * @param notedAt when, UTC; {@code null} where it was noted before that was kept
 */
public record NotedDeduction(String item, int count, String notedBy, @Nullable Instant notedAt) {

	boolean isSameAs(NoteDeductions.Item other) {
		return this.item.equals(other.item()) && this.count == other.count();
	}

}
