package rimebook.commentary.web;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;

/**
 * The cookie in which a browser keeps the token of the link it was opened with: no script
 * can read it, and it goes to these pages alone.
 */
final class LinkCookie {

	private static final String NAME = "rimebook-commentary";

	private LinkCookie() {
	}

	/** The token that the browser has. */
	static Optional<String> read(HttpServletRequest request) {
		return Stream.ofNullable(request.getCookies())
			.flatMap(Arrays::stream)
			.filter((cookie) -> cookie.getName().equals(NAME))
			.map(Cookie::getValue)
			.filter((token) -> !token.isEmpty())
			.findFirst();
	}

	/** Let the browser keep a token until then. */
	static void give(HttpServletRequest request, HttpServletResponse response, String token, Instant now,
			Instant until) {
		add(request, response, token, Duration.between(now, until));
	}

	/** Let the browser forget it. */
	static void take(HttpServletRequest request, HttpServletResponse response) {
		add(request, response, "", Duration.ZERO);
	}

	private static void add(HttpServletRequest request, HttpServletResponse response, String token, Duration life) {
		response.addHeader(HttpHeaders.SET_COOKIE,
				ResponseCookie.from(NAME, token)
					.path(request.getContextPath() + CommentaryController.PATH)
					.httpOnly(true)
					.secure(request.isSecure())
					.sameSite("Lax")
					.maxAge(life)
					.build()
					.toString());
	}

}
