package rimebook.web;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.web.filter.OncePerRequestFilter;

import rimebook.accounts.CodeDoor;
import rimebook.accounts.CodeGuessing;
import rimebook.web.AttemptLimits.Attempt;

/** Slows down whoever guesses at passwords, seat codes or the set-up link. */
class AttemptFilter extends OncePerRequestFilter {

	private static final Set<String> SEAT_PATHS = Set.of("/judge", "/api/seat-pairings");

	private static final int NAME_PER_MINUTE = 10;

	private static final int ADDRESS_PER_MINUTE = 60;

	private static final int SEAT_PER_MINUTE = 20;

	private static final CodeDoor OPEN = new CodeDoor(Duration.ZERO, "");

	private final AttemptLimits limits;

	private final ObjectProvider<CodeGuessing> guesses;

	/**
	 * @param guesses knows the addresses that are stopped from guessing seat codes, for
	 * all nodes; tests of single controllers have none
	 */
	AttemptFilter(AttemptLimits limits, ObjectProvider<CodeGuessing> guesses) {
		this.limits = limits;
		this.guesses = guesses;
	}

	@Override
	protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		CodeDoor door = isSeatCode(request) ? door(request) : OPEN;
		if (!door.pause().isZero()) {
			refuse(door.pause(), request, response);
			return;
		}
		List<Attempt> attempts = attempts(request, door.turn());
		for (Attempt attempt : attempts) {
			Duration wait = this.limits.take(attempt);
			if (!wait.isZero()) {
				refuse(isSeatCode(request) ? stop(request, wait) : wait, request, response);
				return;
			}
		}
		chain.doFilter(request, response);
		if (response.getStatus() < HttpStatus.BAD_REQUEST.value()) {
			attempts.forEach(this.limits::giveBack);
		}
	}

	private CodeDoor door(HttpServletRequest request) {
		CodeGuessing known = this.guesses.getIfAvailable();
		return (known != null) ? known.door(request.getRemoteAddr()) : OPEN;
	}

	private Duration stop(HttpServletRequest request, Duration wait) {
		CodeGuessing known = this.guesses.getIfAvailable();
		return (known != null) ? known.stop(request.getRemoteAddr(), DeviceDescription.of(request).description())
				: wait;
	}

	private static boolean isSeatCode(HttpServletRequest request) {
		return "POST".equals(request.getMethod()) && SEAT_PATHS.contains(request.getRequestURI());
	}

	private static List<Attempt> attempts(HttpServletRequest request, String turn) {
		if (!"POST".equals(request.getMethod())) {
			return List.of();
		}
		String address = request.getRemoteAddr();
		return switch (firstParts(request)) {
			case "/sign-in" -> List.of(new Attempt("sign-in " + address, ADDRESS_PER_MINUTE),
					new Attempt("sign-in " + address + " " + name(request), NAME_PER_MINUTE));
			case "/set-up" -> List.of(new Attempt("set-up " + address, NAME_PER_MINUTE));
			case "/judge", "/api/seat-pairings" ->
				List.of(new Attempt("seat " + address + " " + turn, SEAT_PER_MINUTE));
			default -> List.of();
		};
	}

	private static String firstParts(HttpServletRequest request) {
		String path = request.getRequestURI();
		return path.startsWith("/set-up/") ? "/set-up" : path;
	}

	private static String name(HttpServletRequest request) {
		return Objects.requireNonNullElse(request.getParameter("signInName"), "").strip().toLowerCase(Locale.ROOT);
	}

	private void refuse(Duration wait, HttpServletRequest request, HttpServletResponse response) throws IOException {
		long seconds = wait.toSeconds() + 1;
		response.setHeader(HttpHeaders.RETRY_AFTER, Long.toString(seconds));
		Refusal refusal = Refusal.of(HttpStatus.TOO_MANY_REQUESTS, "too-many-attempts",
				"Too many attempts failed from here. Wait " + seconds + " seconds, then try again.");
		if (request.getRequestURI().startsWith("/api/")) {
			ProblemWriter.write(refusal, request, response);
			return;
		}
		request.setAttribute(ErrorPageController.REFUSAL, refusal);
		response.sendError(refusal.status().value());
	}

}
