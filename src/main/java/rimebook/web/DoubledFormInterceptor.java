package rimebook.web;

import java.io.IOException;
import java.util.Optional;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.FlashMap;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.support.RequestContextUtils;

import rimebook.pages.Notice;
import rimebook.web.FormAnswers.FormAnswer;

/**
 * A form of a desk that is sent twice is done once and answered twice alike. Forms
 * without a token, as scripts send them that number their acts themselves, pass.
 */
class DoubledFormInterceptor implements HandlerInterceptor {

	private static final String TAKEN = DoubledFormInterceptor.class.getName() + ".taken";

	private static final String NOTICE = "notice";

	private final ObjectProvider<FormAnswers> answers;

	/** Tests of single controllers have no memory of answers. */
	DoubledFormInterceptor(ObjectProvider<FormAnswers> answers) {
		this.answers = answers;
	}

	@Override
	public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler)
			throws IOException {
		FormAnswers known = this.answers.getIfAvailable();
		if (known == null || !"POST".equals(request.getMethod()) || request.getParameter(FormTokens.FIELD) == null) {
			return true;
		}
		String digest = FormDigest.of(request);
		Optional<FormAnswer> before = known.takeOn(digest);
		if (before.isPresent()) {
			repeat(before.get(), request, response);
			return false;
		}
		request.setAttribute(TAKEN, digest);
		return true;
	}

	private static void repeat(FormAnswer answer, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		if (answer.notice() != null) {
			RequestContextUtils.getOutputFlashMap(request).put(NOTICE, answer.notice());
			RequestContextUtils.saveOutputFlashMap(answer.location(), request, response);
		}
		response.sendRedirect(answer.location());
	}

	@Override
	public void afterCompletion(HttpServletRequest request, HttpServletResponse response, Object handler,
			@Nullable Exception thrown) {
		FormAnswers known = this.answers.getIfAvailable();
		if (known == null || !(request.getAttribute(TAKEN) instanceof String digest)) {
			return;
		}
		request.removeAttribute(TAKEN);
		String location = response.getHeader(HttpHeaders.LOCATION);
		boolean led = location != null && HttpStatus.valueOf(response.getStatus()).is3xxRedirection();
		FormAnswer answer = new FormAnswer(led ? location : "", notice(request));
		if (led && answer.isShort()) {
			known.done(digest, answer);
		}
		else {
			known.letGo(digest);
		}
	}

	private static @Nullable Notice notice(HttpServletRequest request) {
		FlashMap flash = RequestContextUtils.getOutputFlashMap(request);
		return (flash != null && flash.get(NOTICE) instanceof Notice notice) ? notice : null;
	}

}
