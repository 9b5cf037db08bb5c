package rimebook.keying;

import org.springframework.validation.Errors;

import rimebook.performances.PerformanceId;

/**
 * What every form of the keying desk carries: whose it is, and on which look it rests.
 */
class KeyedForm {

	private String performance = "";

	private int sequence = 1;

	public String getPerformance() {
		return this.performance;
	}

	public void setPerformance(String performance) {
		this.performance = performance;
	}

	/** The version that this form would be: one more than the one it was filled from. */
	public int getSequence() {
		return this.sequence;
	}

	public void setSequence(int sequence) {
		this.sequence = sequence;
	}

	/** Rest the form on the performance on the ice and the version seen. */
	void restOn(KeyingPage page, int seen) {
		this.performance = page.performance();
		this.sequence = seen + 1;
	}

	/** Say so when another team is on the ice than the one the form was filled for. */
	boolean isAbout(KeyingPage page, Errors errors) {
		boolean about = page.ice().now() != null && this.performance.equals(page.performance());
		if (!about) {
			errors.reject("keying.desk.moved-on", "Another team is on the ice, or none; nothing was changed.");
		}
		return about;
	}

	PerformanceId performanceGiven() {
		return PerformanceId.of(this.performance);
	}

}
