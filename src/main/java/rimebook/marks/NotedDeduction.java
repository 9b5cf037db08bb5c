package rimebook.marks;

/**
 * A deduction from the table of the rule set.
 *
 * @param item its short name in the table
 * @param count how many, or how much, in the unit of the item
 * @param notedBy who noted it
 */
public record NotedDeduction(String item, int count, String notedBy) {

	boolean isSameAs(NoteDeductions.Item other) {
		return this.item.equals(other.item()) && this.count == other.count();
	}

}
