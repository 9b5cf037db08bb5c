package rimebook.stand.web;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.performances.PerformanceId;
import rimebook.remarks.Remarks;
import rimebook.wording.Sentence;

/** A remark to the panel as it is typed. */
record RemarkForm(@Nullable String performance, @Nullable String kind, @Nullable String text, @Nullable String touch) {

	static RemarkForm about(String performance) {
		return new RemarkForm(performance, Remarks.RemarkKind.FALL.name(), "", "");
	}

	/** The same performance with a prepared remark. */
	RemarkForm filled(QuickRemark quick, String words) {
		return new RemarkForm(this.performance, quick.kind().name(), words, "");
	}

	PerformanceId performanceGiven() {
		return Given.read("performance", this.performance, PerformanceId::of, Sentence.of("stand.performance-missing"));
	}

	Remarks.RemarkKind kindGiven() {
		return Given.read("kind", this.kind, Remarks.RemarkKind::valueOf, Sentence.of("stand.remark-kind-missing"));
	}

	/**
	 * The touch of the clock that it tells of; none for what is not about the time.
	 */
	@Nullable Instant touchGiven() {
		return Remarks.RemarkKind.TIME.name().equals(this.kind) ? Touched.read(this.touch) : null;
	}

}
