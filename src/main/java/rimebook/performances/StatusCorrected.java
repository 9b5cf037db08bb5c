package rimebook.performances;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/**
 * Two officials set how a performance came through, or it follows from what they set: a
 * new standing is due.
 *
 * @param entry whose performance it is
 * @param status how it came through now
 * @param words what became what, for the new standing's note; nothing about the reason,
 * which may be somebody's health
 */
public record StatusCorrected(PerformanceId performance, SegmentId segment, EntryId entry, PerformanceStatus status,
		String words, AuditedChange change) implements AuditedEvent {

	/** Set the status of a performance and say so. */
	static StatusCorrected of(Performance performance, PerformanceStatus next, AuditedChange change) {
		String before = performance.status().inWords();
		String after = next.inWords();
		performance.correct(next, change.reason());
		return new StatusCorrected(performance.id(), performance.segment(), performance.entry(), next,
				before + " became " + after, change.from(before, after));
	}

	/** The same, with those named who decided it. */
	StatusCorrected by(String names) {
		return new StatusCorrected(this.performance, this.segment, this.entry, this.status,
				this.words + " (" + names + ")", this.change);
	}

	/** The same where it follows from another change, which tells why and who. */
	static StatusCorrected followed(Performance performance, PerformanceStatus next, AuditedChange cause) {
		return of(performance, next,
				AuditedChange.of(cause.actor(), "performance", performance.id(), "performance.status-followed")
					.because(cause.reason()));
	}

}
