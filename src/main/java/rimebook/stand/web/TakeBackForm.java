package rimebook.stand.web;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.panels.SeatId;
import rimebook.shared.Required;

/** The taking back of what was decided about a judge's seat, as it is typed. */
record TakeBackForm(@Nullable String decided, @Nullable String takeBackRule, @Nullable String takeBackReason) {

	static final TakeBackForm EMPTY = new TakeBackForm("", "", "");

	SeatId seatGiven() {
		return Given.read("decided", this.decided, SeatId::of, "Please choose what is taken back.");
	}

	/** The rule by which a judge returns; empty where none is needed. */
	String ruleGiven() {
		return Given.text(this.takeBackRule);
	}

	String reasonGiven() {
		return Required.text("takeBackReason", Given.text(this.takeBackReason), 500);
	}

}
