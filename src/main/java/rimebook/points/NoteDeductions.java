package rimebook.points;

import java.util.List;

import rimebook.performances.PerformanceId;

/**
 * All deductions of a performance, to take the place of those noted before.
 *
 * @param sequence 1 for the first list of a performance, one more for each change
 * @param items in the order noted; empty when all are taken back
 */
public record NoteDeductions(PerformanceId performance, int sequence, List<Item> items) {

	public NoteDeductions {
		items = List.copyOf(items);
	}

	/**
	 * One deduction.
	 *
	 * @param item its short name in the table of the rule set
	 * @param count how many, or how much, in the unit of the item
	 */
	public record Item(String item, int count) {
	}

}
