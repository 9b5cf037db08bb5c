package rimebook.pages;

import org.jspecify.annotations.Nullable;

/**
 * What can be answered at the door, before anything else of the house is asked. It is
 * asked by the one thread that hears of all connections, so it must neither wait nor
 * work: whatever is not at hand goes the usual way.
 */
@FunctionalInterface
public interface DoorAnswers {

	/** The answer, {@code null} for what has to go the usual way. */
	@Nullable Told answer(Asked asked);

	/**
	 * A plain GET or HEAD, not by TLS.
	 *
	 * @param headOnly whether only the head of the answer is asked for
	 * @param path letters, digits and {@code /-_.~} only
	 * @param query as it was sent, empty for none
	 * @param acceptEncoding the header of that name, empty for none; so the others
	 */
	record Asked(boolean headOnly, String path, String query, String acceptEncoding, String acceptLanguage,
			String ifNoneMatch) {
	}

	/**
	 * An answer.
	 *
	 * @param head status line and headers but for the date, each with its line end
	 * @param more further headers, in ASCII
	 * @param body not to be changed by anybody
	 * @param close whether the connection ends with it
	 */
	record Told(byte[] head, String more, byte[] body, boolean close) {
	}

}
