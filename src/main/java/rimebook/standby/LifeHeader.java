package rimebook.standby;

import java.io.IOException;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Tells tablets with every answer which life of the service gives it, and which were
 * before, the newest first.
 */
final class LifeHeader extends OncePerRequestFilter {

	static final String NAME = "Rimebook-Life";

	private final ServiceLives lives;

	LifeHeader(ServiceLives lives) {
		this.lives = lives;
	}

	@Override
	protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		response.setHeader(NAME, this.lives.header());
		chain.doFilter(request, response);
	}

}
