package rimebook.web;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.util.WebUtils;

import rimebook.accounts.Role;
import rimebook.accounts.SeatCodes;
import rimebook.accounts.SeatGrant;
import rimebook.accounts.SeatPrincipal;

/**
 * Knows a judge's tablet by the token it shows, in its cookie or as a bearer token, for
 * this one request.
 */
class SeatDeviceFilter extends OncePerRequestFilter {

	static final String COOKIE = "rimebook-seat";

	private static final String BEARER = "Bearer ";

	private final ObjectProvider<SeatCodes> seats;

	private final CrewCookie crew;

	SeatDeviceFilter(ObjectProvider<SeatCodes> seats, CrewCookie crew) {
		this.seats = seats;
		this.crew = crew;
	}

	@Override
	protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		token(request).flatMap((token) -> this.seats.getObject().grantOf(token)).ifPresent((seat) -> {
			this.crew.give(request, response);
			admit(seat);
		});
		chain.doFilter(request, response);
	}

	/** An answer that is written later is still an answer to the same tablet. */
	@Override
	protected boolean shouldNotFilterAsyncDispatch() {
		return false;
	}

	private static Optional<String> token(HttpServletRequest request) {
		String header = request.getHeader("Authorization");
		if (header != null && header.startsWith(BEARER)) {
			return Optional.of(header.substring(BEARER.length()).strip());
		}
		return Optional.ofNullable(WebUtils.getCookie(request, COOKIE)).map(Cookie::getValue);
	}

	private static void admit(SeatGrant seat) {
		SecurityContext context = SecurityContextHolder.createEmptyContext();
		context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(new SeatPrincipal(seat), null,
				List.of(new SimpleGrantedAuthority(Role.JUDGE.authority()))));
		SecurityContextHolder.setContext(context);
	}

}
