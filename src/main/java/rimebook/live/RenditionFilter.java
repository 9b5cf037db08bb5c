package rimebook.live;

import java.io.IOException;
import java.util.Optional;
import java.util.Set;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpFilter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;

/**
 * Answers what is kept where something of the house has to come before it: in a
 * rehearsal, whose files are marked on their way out. Everywhere else it is answered by
 * {@link KeptValve}.
 */
class RenditionFilter extends HttpFilter {

	private static final long serialVersionUID = 1L;

	private static final Set<String> METHODS = Set.of("GET", "HEAD");

	private final transient KeptAnswers answers;

	RenditionFilter(KeptAnswers answers) {
		this.answers = answers;
	}

	@Override
	protected void doFilter(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws IOException, ServletException {
		Optional<Rendition> kept = METHODS.contains(request.getMethod()) ? this.answers.kept(request, response)
				: Optional.empty();
		if (kept.isEmpty()) {
			chain.doFilter(request, response);
			return;
		}
		this.answers.answer(kept.get(), request, response);
	}

}
