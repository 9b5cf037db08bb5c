package rimebook.web;

import java.util.List;
import java.util.Optional;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.HttpHeaders;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.web.authentication.preauth.AbstractPreAuthenticatedProcessingFilter;
import org.springframework.security.web.context.RequestAttributeSecurityContextRepository;
import org.springframework.web.util.WebUtils;

import rimebook.accounts.Role;
import rimebook.accounts.SeatCodes;
import rimebook.accounts.SeatPrincipal;

/**
 * Knows a judge's tablet by the token it shows, in its cookie or as a bearer token, for
 * this one request and for an answer to it that is written later. Whoever shows a token
 * that opens nothing goes on as anybody else. Sessions are neither made nor looked for: a
 * person may be signed in on the same device.
 */
class SeatDeviceFilter extends AbstractPreAuthenticatedProcessingFilter {

	static final String COOKIE = "rimebook-seat";

	private static final String BEARER = "Bearer ";

	private static final String TABLET = "a tablet";

	private final ObjectProvider<SeatCodes> seats;

	SeatDeviceFilter(ObjectProvider<SeatCodes> seats, CrewCookie crew) {
		this.seats = seats;
		setAuthenticationManager(this::seatOf);
		setAuthenticationSuccessHandler((request, response, seat) -> crew.give(request, response));
		setSecurityContextRepository(new RequestAttributeSecurityContextRepository());
		// The usual details would look for a session.
		setAuthenticationDetailsSource(HttpServletRequest::getRemoteAddr);
	}

	/** The token is the secret; what names the tablet comes into the log. */
	@Override
	protected @Nullable Object getPreAuthenticatedPrincipal(HttpServletRequest request) {
		return token(request).isPresent() ? TABLET : null;
	}

	@Override
	protected @Nullable Object getPreAuthenticatedCredentials(HttpServletRequest request) {
		return token(request).orElse(null);
	}

	private Authentication seatOf(Authentication tablet) {
		return this.seats.getObject()
			.grantOf(String.valueOf(tablet.getCredentials()))
			.map((seat) -> UsernamePasswordAuthenticationToken.authenticated(new SeatPrincipal(seat), null,
					List.of(new SimpleGrantedAuthority(Role.JUDGE.authority()))))
			.orElseThrow(() -> new BadCredentialsException("The token stands for no seat (any more)"));
	}

	private static Optional<String> token(HttpServletRequest request) {
		String header = request.getHeader(HttpHeaders.AUTHORIZATION);
		if (header != null && header.startsWith(BEARER)) {
			return Optional.of(header.substring(BEARER.length()).strip());
		}
		return Optional.ofNullable(WebUtils.getCookie(request, COOKIE)).map(Cookie::getValue);
	}

}
