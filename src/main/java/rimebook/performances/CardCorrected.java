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

	/**
	 * What two officials approved.
	 * @param action the action of the line in the record
	 */
	public static CardCorrected of(PerformanceView performance, String action, Words words,
			Amending.Approval approval) {
		return new CardCorrected(performance.id(), performance.segment(), performance.entry(),
				words.place() + words.before() + " became " + words.after(),
				AuditedChange.of(approval.actor(), "performance", performance.id(), action)
					.from(words.place() + words.before(), words.place() + words.after())
					.because(approval.reasonWithNames()));
	}

	/**
	 * What became what.
	 *
	 * @param place whose card and which line of it, up to the colon and the blank after
	 * it
	 */
	public record Words(String place, String before, String after) {
	}

}
