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
			return Refusal.of(HttpStatus.UNPROCESSABLE_CONTENT, refused.code(), String.valueOf(refused.getMessage()));
		}
		if (thrown instanceof OptimisticLockingFailureException) {
			return Refusal.of(ConflictException.stale("record"));
		}
		if (thrown instanceof DataIntegrityViolationException) {
			return Refusal.of(HttpStatus.CONFLICT, "saved-at-once",
					"Somebody else saved something at the same moment that excludes this. Look again, then repeat.");
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
			return Refusal.of(HttpStatus.BAD_REQUEST, "field-missing",
					List.of(new Refusal.Fault(missing.getParameterName(),
							"The field '" + missing.getParameterName() + "' is missing.")));
		}
		return readStatus(thrown);
	}

	private static @Nullable Refusal readStatus(Throwable thrown) {
		if (thrown instanceof HttpRequestMethodNotSupportedException wrong) {
			return Refusal.of(HttpStatus.METHOD_NOT_ALLOWED, "wrong-method",
					"This address does not take " + wrong.getMethod() + "; it takes "
							+ String.join(", ", Objects.requireNonNullElse(wrong.getSupportedMethods(), new String[0]))
							+ ".");
		}
		if (thrown instanceof HttpMediaTypeNotSupportedException wrong) {
			return Refusal.of(HttpStatus.UNSUPPORTED_MEDIA_TYPE, "unsupported-type",
					"This address takes " + wrong.getSupportedMediaTypes() + " only; say so in Content-Type.");
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
		return Refusal.of(HttpStatus.BAD_REQUEST, "malformed-json", "The body is missing or is not well-formed JSON.");
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
		return Refusal.of(HttpStatus.BAD_REQUEST, "field-malformed", List
			.of(new Refusal.Fault(field, "The field '" + field + "' is missing or does not have the expected form.")));
	}

	private static Refusal fields(BindingResult result) {
		List<Refusal.Fault> faults = result.getAllErrors()
			.stream()
			.map((error) -> new Refusal.Fault((error instanceof FieldError at) ? at.getField() : "", sentence(error)))
			.toList();
		return new Refusal(HttpStatus.UNPROCESSABLE_CONTENT, "fields-refused", faults.get(0).message(), faults, "");
	}

	private static String sentence(ObjectError error) {
		if (error instanceof FieldError at) {
			return at.isBindingFailure() ? "The field '" + at.getField() + "' does not have the expected form."
					: "The field '" + at.getField() + "' " + at.getDefaultMessage() + ".";
		}
		return Objects.requireNonNullElse(error.getDefaultMessage(), "The request is refused.");
	}

}
