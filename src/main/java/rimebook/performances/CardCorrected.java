package rimebook.performances;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/**
 * Two officials corrected a closed card: a new standing is due.
 *
 * @param entry whose performance it is
 * @param words which judge's marks became which, for the new standing's note
 */
public record CardCorrected(PerformanceId performance, SegmentId segment, EntryId entry, String words,
		AuditedChange change) implements AuditedEvent {
}
