package rimebook.web;

import java.time.Clock;
import java.time.Duration;
import java.util.Arrays;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;

import rimebook.accounts.CrewSigns;

/**
 * The cookie by which the door knows the crew ({@link DoorValve}). Whoever is signed in
 * or holds a seat gets one unless a genuine sign came with the request; it opens nothing
 * by itself.
 */
class CrewCookie {

	private static final String NAME = "rimebook-crew";

	private static final String BEARER = "Bearer ";

	/** As long as a session at most; it is renewed after that. */
	private static final Duration KEPT = Duration.ofHours(12);

	private final ObjectProvider<CrewSigns> signs;

	private final Clock clock;

	/**
	 * @param signs tests of single controllers have none
	 */
	CrewCookie(ObjectProvider<CrewSigns> signs, Clock clock) {
		this.signs = signs;
		this.clock = clock;
	}

	/** Tell whether the request shows something that this service signed. */
	boolean comesWith(HttpServletRequest request) {
		CrewSigns known = this.signs.getIfAvailable();
		if (known == null) {
			return false;
		}
		String header = request.getHeader(HttpHeaders.AUTHORIZATION);
		Cookie[] cookies = request.getCookies();
		return header != null && header.startsWith(BEARER) && known.isGenuine(header.substring(BEARER.length()).strip())
				|| cookies != null && Arrays.stream(cookies)
					.filter(CrewCookie::mayBeASign)
					.anyMatch((cookie) -> known.isGenuine(cookie.getValue()));
	}

	private static boolean mayBeASign(Cookie cookie) {
		return NAME.equals(cookie.getName()) || SeatDeviceFilter.COOKIE.equals(cookie.getName());
	}

	/** Give one to somebody of the crew who comes without. */
	void give(HttpServletRequest request, HttpServletResponse response) {
		CrewSigns known = this.signs.getIfAvailable();
		if (known != null && !comesWith(request)) {
			response.addHeader(HttpHeaders.SET_COOKIE,
					ResponseCookie.from(NAME, known.until(this.clock.instant().plus(KEPT)))
						.httpOnly(true)
						.secure(request.isSecure())
						.sameSite("Lax")
						.path("/")
						.maxAge(KEPT)
						.build()
						.toString());
		}
	}

}
