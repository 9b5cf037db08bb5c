package rimebook.letters;

import java.time.Instant;
import java.util.Locale;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;

/**
 * A letter as it was written, and what became of it.
 *
 * @param to who it goes to; empty once the letter was emptied
 * @param content kept as it was sent; empty once the letter was emptied
 * @param linkAt where in the body its personal link stands, as a bracket that says that
 * it is not kept; {@code null} for none
 */
public record LetterView(UUID id, UUID sending, EntryId entry, Addressees.Addressee to, Locale language,
		Draft.Content content, Course course, Marks marks, @Nullable Integer linkAt) {

	/** Tell whether it takes a personal link along. */
	public boolean isLinked() {
		return this.linkAt != null;
	}

	/** Tell whether it took a personal link along to the mail server. */
	public boolean tookLinkAlong() {
		return isLinked() && this.course.attempts() > 0;
	}

	/** Tell whether names, addresses and texts were deleted. */
	public boolean isEmptied() {
		return this.marks.emptiedAt() != null;
	}

	/** Tell whether it can be sent again, and nobody did so yet. */
	public boolean maySendAgain() {
		return this.course.state().maySendAgain() && this.marks.againAs() == null && !isEmptied();
	}

	/** Tell whether it can still be taken back. */
	public boolean mayCancel() {
		return this.course.state() == LetterState.WAITING;
	}

	/**
	 * How far it has come.
	 *
	 * @param attempts how many times it was handed to the server
	 * @param dueAt when it goes or is tried again; {@code null} for never, as in a
	 * restored database
	 * @param settledAt when it was sent, refused or taken back
	 * @param trouble what the server said; empty for nothing
	 */
	public record Course(LetterState state, int attempts, @Nullable Instant dueAt, @Nullable Instant settledAt,
			String trouble) {
	}

	/**
	 * What else is known.
	 *
	 * @param againFor the letter in whose place it goes
	 * @param againAs the letter that went in its place
	 */
	public record Marks(@Nullable UUID againFor, @Nullable UUID againAs, @Nullable Instant emptiedAt) {
	}

}
