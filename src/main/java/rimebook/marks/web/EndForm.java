package rimebook.marks.web;

import java.util.List;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.marks.PerformanceId;
import rimebook.marks.PerformanceStatus;
import rimebook.marks.StandView;

/** The end of a performance without marks that count, as it is typed. */
record EndForm(@Nullable PerformanceId performance, @Nullable Integer version, @Nullable PerformanceStatus how,
		@Nullable String reason) {

	static EndForm about(StandView.@Nullable Row row) {
		return (row == null) ? new EndForm(null, null, null, "")
				: new EndForm(row.performance().id(), row.performance().version(), null, "");
	}

	/** How a performance can end from there, in the order of the form. */
	static List<PerformanceStatus> ways(PerformanceStatus from) {
		return Stream.of(PerformanceStatus.NOT_FINISHED, PerformanceStatus.WITHDRAWN, PerformanceStatus.DISQUALIFIED)
			.filter(from::canBecome)
			.toList();
	}

	PerformanceId performanceChosen() {
		return RemarkForm.chosen("performance", this.performance, "Say which performance has ended.");
	}

	int versionSeen() {
		return RemarkForm.chosen("version", this.version, "Open the stand again, then repeat.");
	}

	PerformanceStatus howChosen() {
		return RemarkForm.chosen("how", this.how, "Please choose how it ended.");
	}

}
