package rimebook.web;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpFilter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;

/**
 * Ends sessions that have lasted for their whole life, however busy they are: whoever
 * left a laptop signed in, or lost a cookie to somebody else, has done so for a day at
 * most. Signing in makes a new session, so the life is counted from there.
 */
class SessionLifeFilter extends HttpFilter {

	private static final long serialVersionUID = 1L;

	private final transient Clock clock;

	private final Duration life;

	SessionLifeFilter(Clock clock, Duration life) {
		this.clock = clock;
		this.life = life;
	}

	@Override
	protected void doFilter(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws IOException, ServletException {
		HttpSession session = request.getSession(false);
		if (session != null && isOver(Instant.ofEpochMilli(session.getCreationTime()))) {
			session.invalidate();
		}
		chain.doFilter(request, response);
	}

	private boolean isOver(Instant began) {
		return !this.clock.instant().isBefore(began.plus(this.life));
	}

}
