package rimebook.web;

import java.util.List;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/**
 * The body of a refused request to {@code /api} (RFC 9457), with members of our own.
 *
 * @param type the page that explains the code
 * @param title the code in words
 * @param status the HTTP status
 * @param detail the sentence for a person
 * @param instance the path asked for
 * @param code the stable code for programs
 * @param errors the fields at fault
 * @param reference what to quote when asking about it, empty unless it was a bug
 * @param received what is there instead of what was sent, such as the version of a card
 * that was received before; left out where there is nothing to show
 */
record Problem(String type, String title, int status, String detail, String instance, String code,
		List<Refusal.Fault> errors, String reference,
		@JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Object received) {

	static Problem of(Refusal refusal, String path) {
		return new Problem("/problems/" + refusal.code(), refusal.title(), refusal.status().value(), refusal.sentence(),
				path, refusal.code(), refusal.errors(), refusal.reference(), refusal.received());
	}

}
