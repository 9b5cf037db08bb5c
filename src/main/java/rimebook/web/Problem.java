package rimebook.web;

import java.util.List;

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
 */
record Problem(String type, String title, int status, String detail, String instance, String code,
		List<Refusal.Fault> errors, String reference) {

	static Problem of(Refusal refusal, String path) {
		return new Problem("/problems/" + refusal.code(), refusal.title(), refusal.status().value(), refusal.sentence(),
				path, refusal.code(), refusal.errors(), refusal.reference());
	}

}
