package rimebook.stand.web;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.performances.PerformanceId;

/** The calling of a team out of the drawn order, as it is typed. */
record CallForm(@Nullable String called, @Nullable String callReason) {

	static final CallForm EMPTY = new CallForm("", "");

	PerformanceId calledGiven() {
		return Given.read("called", this.called, PerformanceId::of, "Please choose which team is called.");
	}

}
