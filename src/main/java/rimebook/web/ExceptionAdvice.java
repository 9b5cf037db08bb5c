package rimebook.web;

import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.context.request.async.AsyncRequestNotUsableException;

/**
 * Answers every request that ended in an exception: with a page for people, with
 * {@code application/problem+json} below {@code /api}. What is nobody's refusal is a bug:
 * its message goes to the log under a reference number, never to the one who asked.
 */
@ControllerAdvice
class ExceptionAdvice {

	private static final Log log = LogFactory.getLog(ExceptionAdvice.class);

	@ExceptionHandler
	Object answer(Exception thrown, HttpServletRequest request) {
		Refusal refusal = RefusalReader.read(thrown);
		return face((refusal != null) ? refusal : bug(thrown), request);
	}

	/** Left to Spring Security, which knows who is asking. */
	@ExceptionHandler({ AccessDeniedException.class, AuthenticationException.class })
	void leave(RuntimeException refused) {
		throw refused;
	}

	/** The one who asked has gone; there is nobody to answer. */
	@ExceptionHandler
	void gone(AsyncRequestNotUsableException gone) {
		log.debug("The one who asked has gone", gone);
	}

	static Object face(Refusal refusal, HttpServletRequest request) {
		String path = path(request);
		return RoutedPath.isOfPrograms(RoutedPath.of(path, request)) ? program(refusal, path) : ErrorPage.of(refusal);
	}

	private static ResponseEntity<ProblemDetail> program(Refusal refusal, String path) {
		return ResponseEntity.status(refusal.status())
			.contentType(MediaType.APPLICATION_PROBLEM_JSON)
			.body(ProblemWriter.problem(refusal, path));
	}

	static Refusal bug(@Nullable Throwable thrown) {
		byte[] number = new byte[4];
		ThreadLocalRandom.current().nextBytes(number);
		String reference = HexFormat.of().formatHex(number);
		log.error("Reference " + reference, thrown);
		return Refusal.bug(reference);
	}

	private static String path(HttpServletRequest request) {
		Object first = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
		return (first instanceof String path) ? path : request.getRequestURI();
	}

}
