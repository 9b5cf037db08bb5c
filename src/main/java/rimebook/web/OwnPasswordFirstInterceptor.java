package rimebook.web;

import java.io.IOException;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.servlet.HandlerInterceptor;

import rimebook.accounts.SignedIn;

/**
 * Leads people whose password somebody else chose to the page on which they replace it,
 * before they see or do anything at a desk: until then somebody else could act in their
 * name.
 */
class OwnPasswordFirstInterceptor implements HandlerInterceptor {

	private static final String PAGE = "/desk/own-password";

	@Override
	public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler)
			throws IOException {
		Authentication signedIn = SecurityContextHolder.getContext().getAuthentication();
		if (signedIn != null && signedIn.getPrincipal() instanceof SignedIn person && person.mustChoosePassword()
				&& !PAGE.equals(RoutedPath.of(request))) {
			response.sendRedirect(request.getContextPath() + PAGE);
			return false;
		}
		return true;
	}

}
