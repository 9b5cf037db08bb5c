package rimebook.accounts.web;

import java.util.UUID;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

/**
 * A seat's code as typed or scanned.
 *
 * @param formToken by which the same form sent twice is known again
 */
record JoinForm(@Nullable String code, @Nullable String formToken) {

	private static final Pattern TOKEN = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

	/** The token as it was given with the page; {@code null} for none, or for another. */
	@Nullable UUID request() {
		return (this.formToken != null && TOKEN.matcher(this.formToken).matches()) ? UUID.fromString(this.formToken)
				: null;
	}

}
