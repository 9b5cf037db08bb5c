package rimebook.live;

import java.io.IOException;
import java.util.Optional;
import java.util.Set;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpFilter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;

import rimebook.pages.ContentPolicy;
import rimebook.shared.NotFoundException;

/**
 * Answers what is kept before anything else of the house is asked: no session, no
 * security context, no controller. All of it is public, and it was first rendered behind
 * them. The headers that protect a page are those of the rest of the house; a test
 * compares them.
 *
 * <p>
 * Written by hand for one figure: of the pages a second that nginx sends as files from
 * the same machine, the way through the framework sent 0.31, a filter in front of it
 * 0.83.
 */
class RenditionFilter extends HttpFilter {

	private static final long serialVersionUID = 1L;

	private static final Set<String> METHODS = Set.of("GET", "HEAD");

	private final transient RenditionCache renditions;

	private final transient PollPace pace;

	RenditionFilter(RenditionCache renditions, PollPace pace) {
		this.renditions = renditions;
		this.pace = pace;
	}

	@Override
	protected void doFilter(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws IOException, ServletException {
		RenditionKey key = RenditionKey.of(request);
		if (key.isPoll()) {
			this.pace.pace(request, response);
		}
		Optional<Rendition> kept = METHODS.contains(request.getMethod()) ? kept(key) : Optional.empty();
		if (kept.isEmpty()) {
			chain.doFilter(request, response);
			return;
		}
		protect(request, response);
		Answer.with(kept.get(), request, response);
	}

	/** Whatever goes wrong here goes wrong again, with a proper answer, further in. */
	private Optional<Rendition> kept(RenditionKey key) {
		try {
			return this.renditions.kept(key);
		}
		catch (NotFoundException ex) {
			return Optional.empty();
		}
	}

	private static void protect(HttpServletRequest request, HttpServletResponse response) {
		response.setHeader("Content-Security-Policy", ContentPolicy.DIRECTIVES);
		response.setHeader("X-Content-Type-Options", "nosniff");
		response.setHeader("X-Frame-Options", "DENY");
		response.setHeader("X-XSS-Protection", "0");
		response.setHeader("Referrer-Policy", "same-origin");
		if (request.isSecure()) {
			response.setHeader("Strict-Transport-Security", "max-age=31536000 ; includeSubDomains");
		}
	}

}
