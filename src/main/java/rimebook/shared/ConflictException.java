package rimebook.shared;

import org.jspecify.annotations.Nullable;

/**
 * The request does not fit what is there now: a stale version, a wrong state, the same
 * identity with other content (HTTP 409).
 */
public final class ConflictException extends RimebookException {

	private static final long serialVersionUID = 1L;

	public ConflictException(String code, String message) {
		super(code, null, message);
	}

	public ConflictException(String code, @Nullable String field, String message) {
		super(code, field, message);
	}

	/**
	 * Say that somebody else changed the thing since it was read.
	 * @param thing what was to be changed, one word ("event")
	 */
	public static ConflictException stale(String thing) {
		return new ConflictException("stale-version", "Somebody else changed this " + thing
				+ " since you opened it. Look at it again, then repeat your change.");
	}

}
