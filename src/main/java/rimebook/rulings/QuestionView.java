package rimebook.rulings;

import java.io.Serializable;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.wording.Sentence;

/**
 * A question with the rulings on it.
 *
 * @param about where a ruling on it would hold
 * @param party the team for which it was asked
 * @param asked what was asked
 * @param rulings the newest first, which is the one that counts; none while it is open
 */
public record QuestionView(QuestionId id, Scope about, Party party, Asked asked, List<RulingView> rulings) {

	public QuestionView {
		rulings = List.copyOf(rulings);
	}

	/** The ruling that counts, {@code null} while the question is open. */
	public @Nullable RulingView current() {
		return this.rulings.isEmpty() ? null : this.rulings.get(0);
	}

	/** Tell whether the referee has not ruled yet. */
	public boolean isOpen() {
		return this.rulings.isEmpty();
	}

	/** Tell whether the ruling that counts may be seen by everybody. */
	boolean isShown() {
		RulingView current = current();
		return current != null && current.answer().shown();
	}

	boolean isAbout(SegmentId segment) {
		return this.about.segment() == null || this.about.segment().equals(segment);
	}

	/** What a question is about. */
	public enum RulingTopic {

		/** A planned element or move. */
		ELEMENT,

		/** What the team wears. */
		COSTUME,

		/** What the team carries or puts on the ice. */
		PROP,

		/** What the team skates to. */
		MUSIC;

		Sentence spoken() {
			return Sentence.of("rulings.topic." + name().toLowerCase(Locale.ROOT));
		}

		/** As it stands on the record. */
		String words() {
			return spoken().english();
		}

	}

	/** Identity of a question and of all rulings on it. */
	public record QuestionId(UUID value) implements Serializable {

		/**
		 * Read an identity from text.
		 * @throws IllegalArgumentException if the text is not a UUID
		 */
		public static QuestionId of(String text) {
			return new QuestionId(UUID.fromString(text));
		}

		@Override
		public String toString() {
			return this.value.toString();
		}

	}

	/** The name of the team for which it was asked. */
	public String team() {
		return this.party.team();
	}

	/** What it is about. */
	public RulingTopic topic() {
		return this.asked.topic();
	}

	/** The question. */
	public String text() {
		return this.asked.text();
	}

	/**
	 * Where a ruling on it would hold.
	 *
	 * @param segment the one it is about, {@code null} for all
	 * @param segmentName empty for all
	 */
	public record Scope(CompetitionId competition, String event, @Nullable SegmentId segment, String segmentName) {
	}

	/** For which team a question was asked. */
	public record Party(EntryId entry, String team, String club) {
	}

	/**
	 * What was asked.
	 *
	 * @param askedBy who asks on behalf of the team
	 * @param takenBy the official who wrote the question down
	 * @param askedAt when, UTC
	 */
	public record Asked(RulingTopic topic, String text, String askedBy, String takenBy, Instant askedAt) {
	}

}
