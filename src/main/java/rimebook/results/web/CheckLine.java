package rimebook.results.web;

import rimebook.results.SignatureCondition;

/**
 * A condition of the signature as this person sees it.
 *
 * @param mayOpen whether the page on which it is mended is open to this person
 */
record CheckLine(SignatureCondition condition, boolean mayOpen) {

	/** Whether nothing is left to do about it. */
	boolean isMet() {
		return this.condition.state() == SignatureCondition.State.MET;
	}

	/** The last part of the message key of its word. */
	public String state() {
		return this.condition.state().name();
	}

}
