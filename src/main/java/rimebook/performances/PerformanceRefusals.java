package rimebook.performances;

import java.util.List;
import java.util.Locale;

import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/** The sentences with which an act on a performance is refused, each written once. */
public final class PerformanceRefusals {

	private PerformanceRefusals() {
	}

	static ConflictException cannotBecome(Performance performance, PerformanceStatus next) {
		return new ConflictException("performance-state", Sentence.of("performances.cannot-become",
				performance.startNumber(), spoken(performance.status()), spoken(next)));
	}

	static ConflictException needsTwo(Performance performance) {
		return new ConflictException("status-needs-two", Sentence.of(
				performance.isReopened() ? "performances.status-needs-two.reopened" : "performances.status-needs-two",
				performance.startNumber()));
	}

	static ConflictException following(Performance performance) {
		return new ConflictException("status-follows",
				Sentence.of("performances.status-follows", performance.startNumber()));
	}

	static ConflictException busyElsewhere(Performance other) {
		return new ConflictException("team-on-ice",
				Sentence.of("performances.team-on-ice-elsewhere", other.startNumber()));
	}

	static ConflictException segmentOver(Performance performance, String later) {
		return new ConflictException("later-segment-open",
				Sentence.of("performances.segment-over", performance.startNumber(), later));
	}

	static ConflictException anotherOnIce(Performance other) {
		return new ConflictException("another-on-ice", Sentence.of("performances.another-on-ice", other.startNumber()));
	}

	static ConflictException anotherReopened(Performance other) {
		return new ConflictException("another-reopened",
				Sentence.of("performances.another-reopened", other.startNumber()));
	}

	static ConflictException laterClosed(Performance performance, Performance later) {
		return new ConflictException("later-cards-closed",
				Sentence.of("performances.later-cards-closed", later.startNumber(), performance.startNumber()));
	}

	static ConflictException setAside(PerformanceView performance) {
		return new ConflictException("performance-set-aside",
				Sentence.of("performances.set-aside", performance.startNumber()));
	}

	static RuleViolationException outOfOrder(int called, int next) {
		return new RuleViolationException("call-reason-missing", "callReason",
				Sentence.of("performances.out-of-order", next, called));
	}

	static ConflictException cannotWait(Performance performance) {
		return new ConflictException("performance-state",
				Sentence.of("performances.cannot-wait", performance.startNumber()));
	}

	static ConflictException notSkatingAgain(Performance performance) {
		return new ConflictException("performance-state",
				Sentence.of("performances.not-skating-again", performance.startNumber()));
	}

	static ConflictException notTakingCards(PerformanceView performance) {
		if (performance.status() == PerformanceStatus.SET_ASIDE) {
			return setAside(performance);
		}
		if (performance.isClosed()) {
			return new ConflictException("card-closed",
					Sentence.of("performances.card-closed", performance.startNumber()));
		}
		return new ConflictException("performance-not-open",
				Sentence.of("performances.not-open", performance.startNumber(), spoken(performance.status())));
	}

	static ConflictException cardsAlreadySent(Performance performance) {
		return new ConflictException("cards-already-sent",
				Sentence.of("performances.cards-already-sent", performance.startNumber()));
	}

	static RuleViolationException seatsMissing(List<Sentence> lacks) {
		return new RuleViolationException("cards-missing",
				Sentence.of("performances.cards-missing", Series.withCommas(lacks)));
	}

	/** A status as it stands in a sentence: "on the ice". */
	public static Sentence spoken(PerformanceStatus status) {
		return Sentence.of("performances.status." + status.name().toLowerCase(Locale.ROOT).replace('_', '-'));
	}

	/** The same in English, as on the record. */
	static String words(PerformanceStatus status) {
		return spoken(status).english();
	}

}
