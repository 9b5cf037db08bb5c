package rimebook.stand.web;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.performances.PerformanceId;
import rimebook.shared.Required;
import rimebook.stand.StandView;

/** The opening of closed cards again, as it is typed. */
record ReopenForm(@Nullable String performance, @Nullable String version, @Nullable String reopenReason) {

	static ReopenForm about(StandView.@Nullable Row row) {
		return (row == null) ? new ReopenForm("", "", "")
				: new ReopenForm(row.performance().id().toString(), String.valueOf(row.performance().version()), "");
	}

	PerformanceId performanceGiven() {
		return Given.read("performance", this.performance, PerformanceId::of, "Say whose cards are to be opened.");
	}

	int versionSeen() {
		return Given.read("version", this.version, Integer::valueOf, "Open the stand again, then repeat.");
	}

	String reasonGiven() {
		return Required.text("reopenReason", Given.text(this.reopenReason), 500);
	}

}
