package rimebook.stand.web;

import java.time.Instant;

import rimebook.clock.ClockView;

/**
 * What the referee may do about what the clock found: tell the panel, or in points
 * judging take a deduction of the rule set. Nothing is done by itself.
 *
 * @param text what the panel would be told, or the deduction as it stands on the sheet
 * @param item the deduction's short name in the table, empty for a notice
 * @param count how many, in the unit of the item
 * @param doubtful whether the clock is to be looked at before this is done
 * @param fromMemory whether the amount, or what leads to it, was written down from memory
 * @param touch the touch of the clock that it rests on, UTC
 */
record ClockProposal(ClockView.ClockFinding.Fault fault, int seconds, String text, String item, int count,
		boolean doubtful, boolean fromMemory, Instant touch) {

	/** The same, marked as from memory: not its amount perhaps, but why this one. */
	ClockProposal markedFromMemory() {
		return new ClockProposal(this.fault, this.seconds, this.text, this.item, this.count, this.doubtful, true,
				this.touch);
	}

	/** Tell whether it is a deduction, not a notice to the panel. */
	public boolean isDeduction() {
		return !this.item.isEmpty();
	}

	/** The seconds as "0:07". */
	public String time() {
		return ClockFace.words(this.seconds);
	}

}
