package rimebook.performances;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;
import rimebook.wording.Sentence;

/**
 * Something that happened to a performance or its segment, published within the
 * transaction of the act; each is a line on the record too.
 */
public sealed interface PerformanceEvent extends AuditedEvent {

	/** In which segment. */
	SegmentId segment();

	/** A call was a slip and was taken back before any card was sent. */
	record CallTakenBack(PerformanceId performance, SegmentId segment,
			AuditedChange change) implements PerformanceEvent {
	}

	/**
	 * Two officials corrected a closed card: a new standing is due.
	 *
	 * @param entry whose performance it is
	 * @param said which judge's marks became which, for the new standing's note
	 * @param because why, and by whom
	 */
	record CardCorrected(PerformanceId performance, SegmentId segment, EntryId entry, Sentence said, Sentence because,
			AuditedChange change) implements PerformanceEvent {

		/**
		 * What two officials approved.
		 * @param action the action of the line in the record
		 */
		public static CardCorrected of(PerformanceView performance, String action, Words words,
				Amending.Approval approval) {
			Sentence because = approval.reasonWithNames();
			return new CardCorrected(performance.id(), performance.segment(), performance.entry(),
					Sentence.of("note.corrected", words.place(), words.before(), words.after()), because,
					AuditedChange.of(approval.actor(), "performance", performance.id(), action)
						.from(words.there(words.before()), words.there(words.after()))
						.because(because.english()));
		}

		/**
		 * What became what.
		 *
		 * @param place whose card, and which line of it; or which line of what the
		 * technical panel sent
		 */
		public record Words(Sentence place, Sentence before, Sentence after) {

			private String there(Sentence value) {
				return this.place.english() + ": " + value.english();
			}

		}

	}

	/** A judge's card was received; it may still change until the cards are closed. */
	record CardReceived(PerformanceId performance, SegmentId segment,
			AuditedChange change) implements PerformanceEvent {
	}

	/**
	 * The referee closed the cards of a performance: a new standing is due.
	 *
	 * @param words what the new standing says about itself; empty where nothing is
	 * unusual
	 * @param panel whose cards count in the segment, for whoever goes on with them
	 */
	record CardsClosed(PerformanceId performance, SegmentId segment, String words, CountingPanel panel,
			AuditedChange change) implements PerformanceEvent {
	}

	/**
	 * The referee opened the closed cards of a performance again. What was published
	 * stays; what was signed does not cover it any more.
	 */
	record CardsReopened(PerformanceId performance, SegmentId segment,
			AuditedChange change) implements PerformanceEvent {
	}

	/**
	 * Other cards count in a segment than before: a new standing is due where there is
	 * one.
	 *
	 * @param words what changed, for the new standing's note
	 */
	record PanelChanged(SegmentId segment, String words, AuditedChange change) implements PerformanceEvent {
	}

	/**
	 * The order of an open segment was drawn again before its first call: numbers are
	 * others, and teams that left since are not among its performances any more.
	 */
	record Renumbered(SegmentId segment, AuditedChange change) implements PerformanceEvent {
	}

	/** A team was called on the ice. */
	record Called(PerformanceId performance, SegmentId segment, EntryId entry,
			AuditedChange change) implements PerformanceEvent {
	}

	/**
	 * A performance ended without marks that count: withdrawn, not finished,
	 * disqualified.
	 */
	record Ended(PerformanceId performance, SegmentId segment, PerformanceStatus status,
			AuditedChange change) implements PerformanceEvent {
	}

	/** A segment was opened: its performances stand ready in starting order. */
	record SegmentOpened(SegmentId segment, AuditedChange change) implements PerformanceEvent {
	}

	/**
	 * Two officials set how a performance came through, or it follows from what they set:
	 * a new standing is due.
	 *
	 * @param entry whose performance it is
	 * @param status how it came through now
	 * @param words what became what, for the new standing's note; nothing about the
	 * reason, which may be somebody's health
	 */
	record StatusCorrected(PerformanceId performance, SegmentId segment, EntryId entry, PerformanceStatus status,
			Sentence said, AuditedChange change) implements PerformanceEvent {

		/** Set the status of a performance and say so. */
		static StatusCorrected of(Performance performance, PerformanceStatus next, AuditedChange change) {
			Sentence before = performance.status().spoken();
			Sentence after = next.spoken();
			performance.correct(next, change.reason());
			return new StatusCorrected(performance.id(), performance.segment(), performance.entry(), next,
					Sentence.of("note.became", before, after), change.from(before.english(), after.english()));
		}

		/** The same, with those named who decided it. */
		StatusCorrected by(Sentence names) {
			return new StatusCorrected(this.performance, this.segment, this.entry, this.status,
					Sentence.of("note.named", this.said, names), this.change);
		}

		/** The same where it follows from another change, which tells why and who. */
		static StatusCorrected followed(Performance performance, PerformanceStatus next, AuditedChange cause) {
			return of(performance, next,
					AuditedChange.of(cause.actor(), "performance", performance.id(), "performance.status-followed")
						.because(cause.reason()));
		}

	}

}
