package rimebook.protests;

import java.io.Serializable;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.wording.Sentence;

/**
 * A protest.
 *
 * @param claim what the team protests against
 * @param filing how it was handed in
 * @param decision where it stands
 */
public record ProtestView(ProtestId id, SegmentId segment, Claim claim, Filing filing, Decision decision, int version) {

	/** Where a protest stands. */
	public enum State {

		/**
		 * Written down after the time was over, as handed in before: a second official
		 * confirms that, or it is not heard.
		 */
		UNCONFIRMED,

		/** Received in time and waiting for the referee's decision. */
		FILED,

		/**
		 * Not heard: out of time or about an evaluation; the rule is named as grounds.
		 */
		REFUSED,

		/** Heard and denied by the referee. */
		DENIED,

		/** Heard and upheld by the referee; what follows is a correction of its own. */
		UPHELD;

		Sentence spoken() {
			return Sentence.of("protests.state." + name().toLowerCase(Locale.ROOT));
		}

		/** The states in which somebody still has to decide something. */
		static Set<State> open() {
			return EnumSet.of(UNCONFIRMED, FILED);
		}

	}

	/**
	 * What a protest is about, which decides whether and until when it is heard (ISU
	 * General Regulations 2012, Rule 123 paragraphs 3 and 4). The limits themselves are
	 * settings.
	 */
	public enum ProtestCategory {

		/**
		 * The computation is wrong, or a mark was keyed in wrongly: heard until 24 hours
		 * after the result was posted.
		 */
		CALCULATION,

		/**
		 * Anything else that happened in the segment: heard until 30 minutes after the
		 * result was posted.
		 */
		CONDUCT,

		/**
		 * How judges, referee or technical panel evaluated a performance: never heard.
		 */
		EVALUATION

	}

	/** Identity of a protest. */
	public record ProtestId(UUID value) implements Serializable {

		/**
		 * Read an identity from text.
		 * @throws IllegalArgumentException if the text is not a UUID
		 */
		public static ProtestId of(String text) {
			return new ProtestId(UUID.fromString(text));
		}

		@Override
		public String toString() {
			return this.value.toString();
		}

	}

	/** Where it stands. */
	public State state() {
		return this.decision.state();
	}

	/**
	 * What a team protests against.
	 *
	 * @param posting the posted version that it is against, 0 before the first posting
	 */
	public record Claim(EntryId entry, ProtestCategory category, String text, int posting) {
	}

	/**
	 * How a protest was handed in.
	 *
	 * @param filedBy who protests, as named on the protest
	 * @param receivedBy the official who took it
	 * @param filedAt when it was handed in, UTC
	 * @param writtenAt when it was written down, UTC; {@code null} for the oldest ones
	 * @param confirmedBy who confirmed that it was handed in before the time was over;
	 * empty where nobody had to
	 */
	public record Filing(String filedBy, String receivedBy, Instant filedAt, @Nullable Instant writtenAt,
			String confirmedBy) {
	}

	/**
	 * Whether a protest is heard, and what became of it.
	 *
	 * @param grounds why it was refused, denied or upheld, in the words of whoever
	 * decided unless by rule; empty while undecided
	 */
	public record Decision(State state, Sentence grounds, String decidedBy, @Nullable Instant decidedAt) {
	}

}
