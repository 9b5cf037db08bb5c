package rimebook.marks.web;

import org.jspecify.annotations.Nullable;

import rimebook.marks.PerformanceId;
import rimebook.marks.RemarkKind;
import rimebook.shared.RuleViolationException;

/** A remark to the panel as it is typed. */
record RemarkForm(@Nullable PerformanceId performance, @Nullable RemarkKind kind, @Nullable String text) {

	static RemarkForm about(@Nullable PerformanceId performance) {
		return new RemarkForm(performance, RemarkKind.FALL, "");
	}

	/** The same performance with a prepared remark. */
	RemarkForm filled(QuickRemark quick, String words) {
		return new RemarkForm(this.performance, quick.kind(), words);
	}

	PerformanceId performanceChosen() {
		return chosen("performance", this.performance, "Say which performance it is about.");
	}

	RemarkKind kindChosen() {
		return chosen("kind", this.kind, "Please choose what kind of remark it is.");
	}

	/** Return what a form must name, or refuse the form with the sentence. */
	static <T> T chosen(String field, @Nullable T value, String otherwise) {
		if (value == null) {
			throw new RuleViolationException("field-missing", field, otherwise);
		}
		return value;
	}

}
