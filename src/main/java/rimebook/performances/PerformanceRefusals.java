package rimebook.performances;

import java.util.List;
import java.util.Locale;

import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;

/** The sentences with which an act on a performance is refused, each written once. */
public final class PerformanceRefusals {

	private PerformanceRefusals() {
	}

	static ConflictException cannotBecome(Performance performance, PerformanceStatus next) {
		return new ConflictException("performance-state", "Start number " + performance.startNumber() + " is "
				+ words(performance.status()) + " and cannot become " + words(next) + ".");
	}

	static ConflictException needsTwo(Performance performance) {
		return new ConflictException("status-needs-two", "The cards of start number " + performance.startNumber()
				+ " are " + (performance.isReopened() ? "open again; close them first. " : "closed. ")
				+ "That its team was withdrawn, did not finish or was disqualified is then set by two officials, as a correction.");
	}

	static ConflictException following(Performance performance) {
		return new ConflictException("status-follows", "Start number " + performance.startNumber()
				+ " does not start because of an earlier segment. Correct how the team came through that one; this follows.");
	}

	static ConflictException busyElsewhere(Performance other) {
		return new ConflictException("team-on-ice", "The team is on the ice as start number " + other.startNumber()
				+ ", or its cards are open again. Close its cards or end its performance at the stand first.");
	}

	static ConflictException segmentOver(Performance performance, String later) {
		return new ConflictException("later-segment-open", "Start number " + performance.startNumber()
				+ " cannot skate any more: the segment " + later + " is open and was drawn from this standing.");
	}

	static ConflictException anotherOnIce(Performance other) {
		return new ConflictException("another-on-ice", "Start number " + other.startNumber()
				+ " is still on the ice. Close its cards or end its performance first.");
	}

	static ConflictException anotherReopened(Performance other) {
		return new ConflictException("another-reopened", "The cards of start number " + other.startNumber()
				+ " are open again. Close them first, so that nothing is published while they may change.");
	}

	static ConflictException laterClosed(Performance performance, Performance later) {
		return new ConflictException("later-cards-closed",
				"The cards of start number " + later.startNumber() + " were closed after those of start number "
						+ performance.startNumber() + ". A mistyped mark can now only be corrected by two officials.");
	}

	static ConflictException setAside(PerformanceView performance) {
		return new ConflictException("performance-set-aside", "This skate of start number " + performance.startNumber()
				+ " does not count: the team skates again from the beginning. What was sent for it stays on record and is never closed.");
	}

	static RuleViolationException outOfOrder(int called, int next) {
		return new RuleViolationException("call-reason-missing", "callReason",
				"Start number " + next + " comes next; say why start number " + called + " is called before.");
	}

	static ConflictException cannotWait(Performance performance) {
		return new ConflictException("performance-state", "Start number " + performance.startNumber()
				+ " can wait for others only while it is interrupted, or before it skates again.");
	}

	static ConflictException notSkatingAgain(Performance performance) {
		return new ConflictException("performance-state",
				"Start number " + performance.startNumber() + " does not skate again; there is nothing to take back.");
	}

	static ConflictException notTakingCards(PerformanceView performance) {
		if (performance.status() == PerformanceStatus.SET_ASIDE) {
			return setAside(performance);
		}
		if (performance.isClosed()) {
			return new ConflictException("card-closed", "The referee has closed the cards of start number "
					+ performance.startNumber() + ". A mistyped mark can now only be corrected by two officials.");
		}
		return new ConflictException("performance-not-open", "Start number " + performance.startNumber() + " is "
				+ words(performance.status()) + "; marks are taken only while it is on the ice.");
	}

	static ConflictException cardsAlreadySent(Performance performance) {
		return new ConflictException("cards-already-sent", "Cards were already sent for start number "
				+ performance.startNumber() + "; the call can no longer be taken back.");
	}

	static RuleViolationException seatsMissing(List<String> labels) {
		return new RuleViolationException("cards-missing",
				"The cards cannot be closed yet. Still missing: " + String.join(", ", labels) + ".");
	}

	/** A status in the words of a sentence: "on the ice". */
	public static String words(PerformanceStatus status) {
		return switch (status) {
			case ON_ICE -> "on the ice";
			case SET_ASIDE -> "set aside";
			case REOPENED -> "open again";
			case NOT_FINISHED -> "not finished";
			default -> status.name().toLowerCase(Locale.ROOT);
		};
	}

}
