package rimebook.protests;

import java.io.Serializable;
import java.time.Instant;
import java.util.Locale;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.performances.Amendment;
import rimebook.wording.Sentence;

/**
 * A correction of one closed card, of what the technical panel sent, or of how a team
 * came through.
 *
 * @param amended what shall count, in place of what
 */
public record CorrectionView(CorrectionId id, SegmentId segment, Amended amended, Proposal proposal, Decision decision,
		int version) {

	/** Whether it waits, or how it was decided. */
	public State state() {
		return this.decision.state();
	}

	/**
	 * Who asked for it.
	 *
	 * @param protest the protest that led to it, or {@code null}
	 */
	public record Proposal(String by, Instant at, String reason, ProtestView.@Nullable ProtestId protest) {
	}

	/**
	 * Who decided it; nobody yet while it waits.
	 *
	 * @param by a name, empty while it waits
	 * @param reason why it was turned down, empty otherwise
	 */
	public record Decision(State state, String by, @Nullable Instant at, String reason) {
	}

	/** Where a correction stands. */
	public enum State {

		/** Proposed by one official; nothing has changed yet. */
		PROPOSED,

		/** Approved by another official; the card has a new version. */
		APPROVED,

		/** Turned down by another official. */
		REJECTED;

		Sentence spoken() {
			return Sentence.of("protests.correction.state." + name().toLowerCase(Locale.ROOT));
		}

	}

	/** Identity of a correction. */
	public record CorrectionId(UUID value) implements Serializable {

		/**
		 * Read an identity from text.
		 * @throws IllegalArgumentException if the text is not a UUID
		 */
		public static CorrectionId of(String text) {
			return new CorrectionId(UUID.fromString(text));
		}

		@Override
		public String toString() {
			return this.value.toString();
		}

	}

	/** What shall count, and where. */
	public Amendment.SupposedChange<Amendment> change() {
		return this.amended.change();
	}

	/**
	 * What shall count, in place of what.
	 *
	 * @param change what shall count, and where
	 * @param old what it was proposed on
	 */
	public record Amended(Amendment.SupposedChange<Amendment> change, Amendment old) {
	}

}
