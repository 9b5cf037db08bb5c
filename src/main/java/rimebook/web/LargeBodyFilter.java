package rimebook.web;

import java.io.IOException;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpFilter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;

/**
 * Refuses large bodies of whoever is not signed in, before a byte of them is read.
 * Programs have a limit of their own ({@link BodyLimitFilter}).
 */
class LargeBodyFilter extends HttpFilter {

	private static final long serialVersionUID = 1L;

	@Override
	protected void doFilter(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws IOException, ServletException {
		if (isLarge(request) && !isSignedIn(request)) {
			request.setAttribute(DoorValve.UNREAD, true);
			response.sendError(HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
			return;
		}
		chain.doFilter(request, response);
	}

	private static boolean isLarge(HttpServletRequest request) {
		boolean form = !RoutedPath.isOfPrograms(RoutedPath.of(request));
		boolean file = request.getContentType() != null && request.getContentType().startsWith("multipart/");
		return form && (file || request.getContentLengthLong() > DoorValve.SMALL
				|| request.getHeader("Transfer-Encoding") != null);
	}

	private static boolean isSignedIn(HttpServletRequest request) {
		HttpSession session = request.getSession(false);
		return session != null
				&& session.getAttribute(HttpSessionSecurityContextRepository.SPRING_SECURITY_CONTEXT_KEY) != null;
	}

}
