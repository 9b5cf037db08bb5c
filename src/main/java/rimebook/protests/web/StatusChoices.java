package rimebook.protests.web;

import java.util.List;
import java.util.Locale;

import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.pages.Choice;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.performances.StatusCorrection;

/** Whose way through a segment can be set otherwise, and to what. */
@Component
class StatusChoices {

	private static final List<PerformanceStatus> ALL = List.of(PerformanceStatus.WITHDRAWN,
			PerformanceStatus.NOT_FINISHED, PerformanceStatus.DISQUALIFIED, PerformanceStatus.CLOSED,
			PerformanceStatus.WAITING, PerformanceStatus.ON_ICE);

	private final SegmentRun run;

	private final StatusCorrection statuses;

	private final Entries entries;

	private final MessageSource messages;

	StatusChoices(SegmentRun run, StatusCorrection statuses, Entries entries, MessageSource messages) {
		this.run = run;
		this.statuses = statuses;
		this.entries = entries;
		this.messages = messages;
	}

	/** The teams that are done, with how they came through. */
	List<Choice> teams(SegmentId segment) {
		return this.run.performances(segment)
			.stream()
			.filter((performance) -> performance.status().isDone())
			.map((performance) -> Choice.of(performance.id(), words(performance)))
			.toList();
	}

	/** What the chosen one can be set to; before one is chosen, everything there is. */
	List<PerformanceStatus> statuses(SegmentId segment, String chosen) {
		return this.run.performances(segment)
			.stream()
			.filter((performance) -> performance.id().toString().equals(chosen))
			.findFirst()
			.map((performance) -> this.statuses.offers(performance.id()))
			.map((offers) -> ALL.stream().filter(offers::contains).toList())
			.orElse(ALL);
	}

	private String words(PerformanceView performance) {
		String status = this.messages.getMessage("protests.status.now." + performance.status(), null, Locale.ENGLISH);
		return performance.startNumber() + "  " + this.entries.entry(performance.entry()).team().name() + ": " + status;
	}

}
