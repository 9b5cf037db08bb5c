package rimebook.rehearsal;

import java.io.IOException;
import java.util.Locale;

import org.springframework.http.HttpHeaders;
import org.springframework.web.util.WebUtils;

import jakarta.servlet.Filter;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;

/** Gives cookies away under the names of the rehearsal, and asks robots to stay away. */
class OutgoingCookies implements Filter {

	private static final String SET_COOKIE = HttpHeaders.SET_COOKIE.toLowerCase(Locale.ROOT);

	/** Error pages come by here a second time, with the answer as the server has it. */
	@Override
	public void doFilter(ServletRequest request, ServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		if (response instanceof HttpServletResponse answer
				&& WebUtils.getNativeResponse(response, Renaming.class) == null) {
			answer.setHeader("X-Robots-Tag", "noindex");
			chain.doFilter(request, new Renaming(answer));
		}
		else {
			chain.doFilter(request, response);
		}
	}

	private static final class Renaming extends HttpServletResponseWrapper {

		Renaming(HttpServletResponse response) {
			super(response);
		}

		@Override
		public void addCookie(Cookie cookie) {
			Cookie own = new Cookie(OwnCookies.PREFIX + cookie.getName(), cookie.getValue());
			cookie.getAttributes().forEach(own::setAttribute);
			if (own.getMaxAge() != 0) {
				own.setMaxAge(OwnCookies.LIFE);
			}
			super.addCookie(own);
		}

		@Override
		public void addHeader(String name, String value) {
			super.addHeader(name, own(name, value));
		}

		@Override
		public void setHeader(String name, String value) {
			super.setHeader(name, own(name, value));
		}

		private static String own(String name, String value) {
			return name.toLowerCase(Locale.ROOT).equals(SET_COOKIE) ? OwnCookies.outgoing(value) : value;
		}

	}

}
