package rimebook.marks.web;

import org.jspecify.annotations.Nullable;

import rimebook.marks.PerformanceId;
import rimebook.marks.RemarkKind;
import rimebook.pages.Given;

/** A remark to the panel as it is typed. */
record RemarkForm(@Nullable String performance, @Nullable String kind, @Nullable String text) {

	static RemarkForm about(String performance) {
		return new RemarkForm(performance, RemarkKind.FALL.name(), "");
	}

	/** The same performance with a prepared remark. */
	RemarkForm filled(QuickRemark quick, String words) {
		return new RemarkForm(this.performance, quick.kind().name(), words);
	}

	PerformanceId performanceGiven() {
		return Given.read("performance", this.performance, PerformanceId::of, "Say which performance it is about.");
	}

	RemarkKind kindGiven() {
		return Given.read("kind", this.kind, RemarkKind::valueOf, "Please choose what kind of remark it is.");
	}

}
