package rimebook.stand.web;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.panels.SeatId;
import rimebook.shared.Required;

/** A substitute's taking over of a judge's seat, as it is typed. */
record TakeoverForm(@Nullable String judge, @Nullable String takeoverReason) {

	static final TakeoverForm EMPTY = new TakeoverForm("", "");

	SeatId judgeGiven() {
		return Given.read("judge", this.judge, SeatId::of, "Please choose whose seat the substitute takes over.");
	}

	String reasonGiven() {
		return Required.text("takeoverReason", Given.text(this.takeoverReason), 500);
	}

}
