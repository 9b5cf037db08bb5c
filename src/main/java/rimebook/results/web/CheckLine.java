package rimebook.results.web;

import rimebook.results.SignatureChecklist;

/**
 * A condition of the signature as this person sees it.
 *
 * @param mayOpen whether the page on which it is mended is open to this person
 */
record CheckLine(SignatureChecklist.SignatureCondition condition, boolean mayOpen) {

	/** Whether nothing is left to do about it. */
	boolean isMet() {
		return this.condition.state() == SignatureChecklist.SignatureCondition.State.MET;
	}

	/** The last part of the message key of its word. */
	public String state() {
		return this.condition.state().name();
	}

}
