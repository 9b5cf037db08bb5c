package rimebook.stand.web;

import java.util.List;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.pages.Given;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceStatus;
import rimebook.stand.StandView;
import rimebook.wording.Sentence;

/** The end of a performance without marks that count, as it is typed. */
record EndForm(@Nullable String performance, @Nullable String version, @Nullable String how, @Nullable String reason) {

	static EndForm about(StandView.@Nullable Row row) {
		return (row == null) ? new EndForm("", "", "", "")
				: new EndForm(row.performance().id().toString(), String.valueOf(row.performance().version()), "", "");
	}

	/** How a performance can end from there, in the order of the form. */
	static List<PerformanceStatus> ways(PerformanceStatus from) {
		return Stream.of(PerformanceStatus.NOT_FINISHED, PerformanceStatus.WITHDRAWN, PerformanceStatus.DISQUALIFIED)
			.filter(from::canBecome)
			.toList();
	}

	PerformanceId performanceGiven() {
		return Given.read("performance", this.performance, PerformanceId::of, Sentence.of("stand.ended-missing"));
	}

	int versionSeen() {
		return Given.read("version", this.version, Integer::valueOf, Sentence.of("stand.open-again"));
	}

	PerformanceStatus howGiven() {
		return Given.read("how", this.how, PerformanceStatus::valueOf, Sentence.of("stand.how-missing"));
	}

}
