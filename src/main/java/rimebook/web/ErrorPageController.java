package rimebook.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** Answers what was refused before any controller was asked, or after it had answered. */
@Controller
class ErrorPageController implements ErrorController {

	/** Where a filter leaves what it wants said. */
	static final String REFUSAL = ErrorPageController.class.getName() + ".refusal";

	@RequestMapping("/error")
	Object error(HttpServletRequest request) {
		if (request.getAttribute(REFUSAL) instanceof Refusal said) {
			return ExceptionAdvice.face(said, request);
		}
		return ExceptionAdvice.face(refusal(request), request);
	}

	private static Refusal refusal(HttpServletRequest request) {
		Object thrown = request.getAttribute(RequestDispatcher.ERROR_EXCEPTION);
		HttpStatus status = status(request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE));
		if (status.is5xxServerError()) {
			return ExceptionAdvice.bug((thrown instanceof Throwable cause) ? cause : null);
		}
		return Refusal.ofStatus(status);
	}

	private static HttpStatus status(@Nullable Object code) {
		HttpStatus status = (code instanceof Integer number) ? HttpStatus.resolve(number) : null;
		return (status != null) ? status : HttpStatus.NOT_FOUND;
	}

}
