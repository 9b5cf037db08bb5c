package rimebook.results;

import java.time.Instant;
import java.util.UUID;

import rimebook.published.Standing;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;
import rimebook.wording.Sentence;

/**
 * A published version of a standing; never changed.
 *
 * @param publishedAt UTC
 * @param fingerprint SHA-256 of the body as stored, in hexadecimal
 */
public record ResultVersion(Key key, ResultState state, Reason reason, Instant publishedAt, String fingerprint,
		Standing standing) {

	/** What the standing is about. */
	public Scope scope() {
		return this.key.scope();
	}

	/** Which segment or event that is. */
	public UUID scopeId() {
		return this.key.scopeId();
	}

	/** Counts up from 1 within its scope. */
	public int number() {
		return this.key.number();
	}

	/** Why it was published. */
	public Cause cause() {
		return this.reason.cause();
	}

	/** What it says about itself beside its cause; may be empty. */
	public Sentence said() {
		return this.reason.said();
	}

	/** The same in English, as on the record. */
	public String note() {
		return said().english();
	}

	/**
	 * Which version it is, of which standing.
	 *
	 * @param number counts up from 1 within its scope
	 */
	public record Key(Scope scope, UUID scopeId, int number) {
	}

	/**
	 * Why a version was published.
	 *
	 * @param said what it says about itself beside its cause, such as what was corrected;
	 * may be empty
	 */
	public record Reason(Cause cause, Sentence said) {
	}

	/** How far a published version can be trusted to stay. */
	public enum ResultState {

		/** May still change: teams are to skate, or the officials have not signed. */
		PROVISIONAL,

		/** Signed by referee and accountant. */
		OFFICIAL

	}

	/** Why a new version was published. */
	public enum Cause {

		/** The cards of a further team were closed. */
		CARDS_CLOSED,
		/** A team withdrew, did not finish or was disqualified. */
		STATUS,
		/**
		 * Other cards count than before: a substitute took over, or gave back, a seat.
		 */
		PANEL,
		/** Two officials corrected a closed card, or how a team came through. */
		CORRECTED,
		/** The segment was posted and the protest clock started. */
		POSTED,
		/** Referee and accountant signed. */
		SIGNED,
		/** The referee opened an official result again. */
		REOPENED,
		/** A segment of the event was cancelled, or brought back. */
		CANCELLED;

		/**
		 * How the record begins the reason of such a version, where the reason alone
		 * would not say what was done; else empty.
		 */
		String lead() {
			return switch (this) {
				case CORRECTED -> "Corrected: ";
				case REOPENED -> "Opened again: ";
				default -> "";
			};
		}

	}

	/** What a standing is about. */
	public enum Scope {

		/** One segment. */
		SEGMENT,

		/** The whole event: its segments combined by factored places, or by points. */
		EVENT

	}

	/** A new version of a standing stands; published in the transaction that wrote it. */
	public record VersionPublished(ResultVersion.Scope scope, UUID scopeId, int number,
			AuditedChange change) implements AuditedEvent {
	}

}
