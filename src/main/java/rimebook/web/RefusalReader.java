package rimebook.web;

import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.TypeMismatchException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.http.HttpStatus;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.validation.BindException;
import org.springframework.validation.BindingResult;
import org.springframework.validation.FieldError;
import org.springframework.validation.ObjectError;
import org.springframework.web.ErrorResponse;
import org.springframework.web.HttpMediaTypeNotSupportedException;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DatabindException;

import rimebook.shared.ConflictException;
import rimebook.shared.RimebookException;
import rimebook.tabulation.TabulationException;
import rimebook.wording.Series;
import rimebook.wording.Sentence;

/** Reads out of an exception what may be told; null means that it is a bug. */
final class RefusalReader {

	private static final int DEPTH = 6;

	private RefusalReader() {
	}

	static @Nullable Refusal read(Throwable thrown) {
		if (thrown instanceof RimebookException refused) {
			return Refusal.of(refused);
		}
		if (thrown instanceof TabulationException refused) {
			return Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, refused.code(), refused.sentence());
		}
		if (thrown instanceof OptimisticLockingFailureException) {
			return Refusal.of(ConflictException.stale("record"));
		}
		if (thrown instanceof DataIntegrityViolationException) {
			return Refusal.of(HttpStatus.CONFLICT, "saved-at-once", Sentence.of("web.saved-at-once"));
		}
		return readRequest(thrown);
	}

	private static @Nullable Refusal readRequest(Throwable thrown) {
		if (thrown instanceof HttpMessageNotReadableException unreadable) {
			return body(unreadable);
		}
		if (thrown instanceof BindException bound) {
			return fields(bound.getBindingResult());
		}
		if (thrown instanceof MethodArgumentTypeMismatchException wrong) {
			return fault(wrong.getName());
		}
		if (thrown instanceof TypeMismatchException wrong) {
			return fault(Objects.requireNonNullElse(wrong.getPropertyName(), "value"));
		}
		if (thrown instanceof MissingServletRequestParameterException missing) {
			return fault("field-missing", missing.getParameterName(), Sentence.of("web.field.absent"));
		}
		return readStatus(thrown);
	}

	private static @Nullable Refusal readStatus(Throwable thrown) {
		if (thrown instanceof HttpRequestMethodNotSupportedException wrong) {
			return Refusal.of(HttpStatus.METHOD_NOT_ALLOWED, "wrong-method",
					Sentence.of("web.method-not-taken", wrong.getMethod(), Series
						.withCommas(List.of(Objects.requireNonNullElse(wrong.getSupportedMethods(), new String[0])))));
		}
		if (thrown instanceof HttpMediaTypeNotSupportedException wrong) {
			return Refusal.of(HttpStatus.UNSUPPORTED_MEDIA_TYPE, "unsupported-type",
					Sentence.of("web.unsupported-type", wrong.getSupportedMediaTypes().toString()));
		}
		if (thrown instanceof MaxUploadSizeExceededException) {
			return Refusal.ofStatus(HttpStatus.CONTENT_TOO_LARGE);
		}
		if (thrown instanceof ErrorResponse answer && answer.getStatusCode().is4xxClientError()) {
			return Refusal.ofStatus(HttpStatus.valueOf(answer.getStatusCode().value()));
		}
		return null;
	}

	private static Refusal body(HttpMessageNotReadableException unreadable) {
		Throwable cause = unreadable.getCause();
		for (int depth = 0; cause != null && depth < DEPTH; depth++, cause = cause.getCause()) {
			if (cause instanceof RimebookException refused) {
				return Refusal.of(refused);
			}
			if (cause instanceof ErrorResponse) {
				return Refusal.ofStatus(HttpStatus.CONTENT_TOO_LARGE);
			}
			if (cause instanceof DatabindException wrong && !wrong.getPath().isEmpty()) {
				return fault(path(wrong));
			}
		}
		return Refusal.of(HttpStatus.BAD_REQUEST, "malformed-json", Sentence.of("web.malformed-json"));
	}

	private static String path(JacksonException wrong) {
		StringBuilder path = new StringBuilder();
		for (JacksonException.Reference step : wrong.getPath()) {
			String name = (step.getPropertyName() != null) ? step.getPropertyName() : "[" + step.getIndex() + "]";
			path.append((path.isEmpty() || name.startsWith("[")) ? "" : ".").append(name);
		}
		return path.toString();
	}

	private static Refusal fault(String field) {
		return fault("field-malformed", field, Sentence.of("web.field.malformed"));
	}

	private static Refusal fault(String code, String field, Sentence predicate) {
		return Refusal.of(HttpStatus.BAD_REQUEST, code, List.of(new Refusal.Fault(field, ofField(field, predicate))));
	}

	private static Sentence ofField(String field, Sentence predicate) {
		return Sentence.of("shared.field", field, predicate);
	}

	private static Refusal fields(BindingResult result) {
		List<Refusal.Fault> faults = result.getAllErrors()
			.stream()
			.map((error) -> new Refusal.Fault((error instanceof FieldError at) ? at.getField() : "", sentence(error)))
			.toList();
		return new Refusal(HttpStatus.UNPROCESSABLE_CONTENT, "fields-refused", faults.get(0).sentence(), faults, "");
	}

	private static Sentence sentence(ObjectError error) {
		if (error instanceof FieldError at) {
			return ofField(at.getField(), at.isBindingFailure() ? Sentence.of("web.field.not-the-form")
					: Sentence.of("web.field.refused", String.valueOf(at.getDefaultMessage())));
		}
		String said = error.getDefaultMessage();
		return (said != null) ? Sentence.said(said) : Sentence.of("web.request-refused");
	}

}
