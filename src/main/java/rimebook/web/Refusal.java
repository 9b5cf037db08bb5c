package rimebook.web;

import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.util.StringUtils;

import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.RimebookException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Why a request was not done, in a form that both a page and a program can be told.
 *
 * @param status the HTTP status
 * @param code the stable code
 * @param sentence what a person reads
 * @param errors the fields at fault
 * @param reference the number that a bug's log line carries, else empty
 * @param received what is there instead of what was sent, {@code null} unless it may be
 * shown
 */
record Refusal(HttpStatus status, String code, Sentence sentence, List<Fault> errors, String reference,
		@Nullable Object received) {

	Refusal(HttpStatus status, String code, Sentence sentence, List<Fault> errors, String reference) {
		this(status, code, sentence, errors, reference, null);
	}

	/** One field at fault and what is wrong with it. */
	record Fault(String field, Sentence sentence) {
	}

	static Refusal of(HttpStatus status, String code, Sentence sentence) {
		return new Refusal(status, code, sentence, List.of(), "");
	}

	static Refusal of(HttpStatus status, String code, List<Fault> errors) {
		return new Refusal(status, code, errors.get(0).sentence(), List.copyOf(errors), "");
	}

	static Refusal of(RimebookException refused) {
		Sentence sentence = refused.sentence();
		return new Refusal(status(refused), refused.code(), sentence, faults(refused.field(), sentence), "",
				(refused instanceof ConflictException conflict) ? conflict.received() : null);
	}

	private static List<Fault> faults(@Nullable String field, Sentence sentence) {
		return (field != null) ? List.of(new Fault(field, sentence)) : List.of();
	}

	private static HttpStatus status(RimebookException refused) {
		if (refused instanceof NotFoundException) {
			return HttpStatus.NOT_FOUND;
		}
		if (refused instanceof ConflictException) {
			return HttpStatus.CONFLICT;
		}
		if (refused instanceof RuleViolationException) {
			return HttpStatus.UNPROCESSABLE_CONTENT;
		}
		throw new IllegalArgumentException("Unknown family", refused);
	}

	static Refusal bug(String reference) {
		return new Refusal(HttpStatus.INTERNAL_SERVER_ERROR, "internal-error", Sentence.of("web.bug", reference),
				List.of(), reference);
	}

	static Refusal formTooOld() {
		return of(HttpStatus.FORBIDDEN, "form-too-old", Sentence.of("web.form-too-old"));
	}

	/** The refusal of a request that no controller was asked about. */
	static Refusal ofStatus(HttpStatus status) {
		return switch (status) {
			case UNAUTHORIZED -> of(status, "not-signed-in", Sentence.of("web.not-signed-in"));
			case FORBIDDEN -> of(status, "not-allowed", Sentence.of("web.not-allowed"));
			case NOT_FOUND -> of(status, "no-such-page", Sentence.of("web.no-such-page"));
			case CONTENT_TOO_LARGE -> of(status, "too-large", Sentence.of("web.too-large"));
			case METHOD_NOT_ALLOWED -> of(status, "wrong-method", Sentence.of("web.wrong-method"));
			default -> of(status, "bad-request", Sentence.of("web.bad-request"));
		};
	}

	/** The code in words: {@code seat-code-unknown} becomes "Seat code unknown". */
	public String title() {
		return StringUtils.capitalize(this.code.replace('-', ' '));
	}

}
