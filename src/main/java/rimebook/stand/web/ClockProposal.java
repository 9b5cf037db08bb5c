package rimebook.stand.web;

import rimebook.clock.ClockView;

/**
 * What the referee may do about what the clock found: tell the panel, or in points
 * judging take a deduction of the rule set. Nothing is done by itself.
 *
 * @param text what the panel would be told, or the deduction as it stands on the sheet
 * @param item the deduction's short name in the table, empty for a notice
 * @param count how many, in the unit of the item
 * @param fromMemory whether the amount, or what leads to it, was written down from memory
 */
record ClockProposal(ClockView.ClockFinding finding, String text, String item, int count, boolean fromMemory) {

	/** The same, marked as from memory: not its amount perhaps, but why this one. */
	ClockProposal markedFromMemory() {
		return new ClockProposal(this.finding, this.text, this.item, this.count, true);
	}

	/** Tell whether it is a deduction, not a notice to the panel. */
	public boolean isDeduction() {
		return !this.item.isEmpty();
	}

	/** The seconds as "0:07". */
	public String time() {
		return ClockFace.words(this.finding.seconds());
	}

}
