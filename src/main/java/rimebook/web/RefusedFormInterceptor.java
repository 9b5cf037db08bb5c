package rimebook.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.validation.BindingResult;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;

/** Answers 422 whenever a page is shown again because its form was refused. */
class RefusedFormInterceptor implements HandlerInterceptor {

	@Override
	public void postHandle(HttpServletRequest request, HttpServletResponse response, Object handler,
			@Nullable ModelAndView page) {
		if (page != null && response.getStatus() == HttpStatus.OK.value() && isRefused(page)) {
			response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
		}
	}

	private static boolean isRefused(ModelAndView page) {
		return page.getModel()
			.values()
			.stream()
			.anyMatch((value) -> value instanceof BindingResult result && result.hasErrors());
	}

}
