package rimebook.live;

import java.io.IOException;
import java.util.Map;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpFilter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;

/**
 * Lets pages of other sites read the public data: reading only, and never as somebody,
 * since no credentials are allowed. Stands before everything else, so that refusals say
 * it, too; what is kept is answered before that, and says it itself.
 */
class OtherSites extends HttpFilter {

	private static final long serialVersionUID = 1L;

	/** Every site. */
	static final String EVERYBODY = "*";

	/** The header that says which sites may read. */
	static final String ALLOWED = "Access-Control-Allow-Origin";

	/** What an answer says that may be read anywhere. */
	static final Map<String, String> READING = Map.of(ALLOWED, EVERYBODY, "Access-Control-Expose-Headers",
			"ETag, Retry-After, " + PollPace.WAIT + ", " + PollPace.STREAMS);

	private static final String METHODS = "GET, HEAD";

	private static final String A_DAY = "86400";

	@Override
	protected void doFilter(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws IOException, ServletException {
		if (!isData(request)) {
			chain.doFilter(request, response);
			return;
		}
		READING.forEach(response::setHeader);
		if (isAskedBefore(request)) {
			response.setHeader("Access-Control-Allow-Methods", METHODS);
			response.setHeader("Access-Control-Allow-Headers", "If-None-Match");
			response.setHeader("Access-Control-Max-Age", A_DAY);
			response.setStatus(HttpServletResponse.SC_NO_CONTENT);
			return;
		}
		chain.doFilter(request, response);
	}

	/** Pages are read where they are; what is for programs is read anywhere. */
	private static boolean isData(HttpServletRequest request) {
		String path = request.getRequestURI().substring(request.getContextPath().length());
		return !path.startsWith("/follow/") || path.endsWith("/moments");
	}

	/** Tell whether a browser asks whether it may ask. */
	private static boolean isAskedBefore(HttpServletRequest request) {
		return request.getMethod().equals("OPTIONS") && request.getHeader("Access-Control-Request-Method") != null;
	}

}
