package rimebook.shared;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * The request does not fit what is there now: a stale version, a wrong state, the same
 * identity with other content (HTTP 409).
 */
public final class ConflictException extends RimebookException {

	private static final long serialVersionUID = 2L;

	private final transient @Nullable Object received;

	public ConflictException(String code, Sentence sentence) {
		this(code, null, sentence);
	}

	public ConflictException(String code, @Nullable String field, Sentence sentence) {
		this(code, field, sentence, null);
	}

	private ConflictException(String code, @Nullable String field, Sentence sentence, @Nullable Object received) {
		super(code, field, sentence);
		this.received = received;
	}

	/**
	 * Refuse what was sent because something else is there, and show that.
	 * @param received what is there instead, as programs are to read it
	 */
	public static ConflictException instead(String code, Sentence sentence, Object received) {
		return new ConflictException(code, null, sentence, received);
	}

	/** What is there instead of what was sent, where it can be shown. */
	public @Nullable Object received() {
		return this.received;
	}

	/**
	 * Refuse a change that was decided on an older look at the thing than the newest.
	 * @param thing what was to be changed ("event"), named by {@code shared.this.<thing>}
	 * @param seen what the person had before them: a version, or what stood there
	 * @param now the same as it is now, {@code null} where the thing was never stored
	 */
	public static void requireSeen(String thing, Object seen, @Nullable Object now) {
		if (now != null && !now.equals(seen)) {
			throw stale(thing);
		}
	}

	/**
	 * Say that somebody else changed the thing since it was read.
	 * @param thing what was to be changed ("event"), named by {@code shared.this.<thing>}
	 */
	public static ConflictException stale(String thing) {
		return outdated(Sentence.of("shared.stale", Sentence.of("shared.this." + thing)));
	}

	/**
	 * Say in words of its own that what the change rests on is not so any more.
	 * @param sentence says what is there now
	 */
	public static ConflictException outdated(Sentence sentence) {
		return new ConflictException("stale-version", sentence);
	}

}
