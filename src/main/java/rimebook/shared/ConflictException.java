package rimebook.shared;

import org.jspecify.annotations.Nullable;

/**
 * The request does not fit what is there now: a stale version, a wrong state, the same
 * identity with other content (HTTP 409).
 */
public final class ConflictException extends RimebookException {

	private static final long serialVersionUID = 1L;

	private final transient @Nullable Object received;

	public ConflictException(String code, String message) {
		this(code, null, message);
	}

	public ConflictException(String code, @Nullable String field, String message) {
		this(code, field, message, null);
	}

	private ConflictException(String code, @Nullable String field, String message, @Nullable Object received) {
		super(code, field, message);
		this.received = received;
	}

	/**
	 * Refuse what was sent because something else is there, and show that.
	 * @param received what is there instead, as programs are to read it
	 */
	public static ConflictException instead(String code, String message, Object received) {
		return new ConflictException(code, null, message, received);
	}

	/** What is there instead of what was sent, where it can be shown. */
	public @Nullable Object received() {
		return this.received;
	}

	/**
	 * Refuse a change that was decided on an older look at the thing than the newest.
	 * @param thing what was to be changed, as people call it ("event")
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
	 * @param thing what was to be changed, as people call it ("event")
	 */
	public static ConflictException stale(String thing) {
		return outdated("Somebody else changed this " + thing
				+ " since you opened it. Look at it again, then repeat your change.");
	}

	/**
	 * Say in words of its own that what the change rests on is not so any more.
	 * @param message a sentence for people that says what is there now
	 */
	public static ConflictException outdated(String message) {
		return new ConflictException("stale-version", message);
	}

}
