package rimebook.pages;

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
 * The cookie in which a browser keeps the token of the personal link it was opened with:
 * no script can read it, and it goes to the pages of that link alone.
 *
 * @param name what it is called
 * @param path where those pages begin, without the application's own path
 */
public record LinkCookie(String name, String path) {

	/** That of a team's managers. */
	public static final LinkCookie OF_TEAM = new LinkCookie("rimebook-team", "/manager");

	/** In which language these want their pages. */
	public static final LinkCookie LANGUAGE_OF_TEAM = new LinkCookie("rimebook-team-language", "/manager");

	private static final String GOOD = LinkCookie.class.getName() + ".good";

	/** A token has 43 characters; more is no slip of the finger. */
	private static final int LONGEST = 500;

	/** The token in what somebody typed or pasted, which may be the whole link. */
	public static String bare(String typed) {
		String text = typed.strip();
		return (text.length() > LONGEST) ? "" : text.substring(text.lastIndexOf('#') + 1);
	}

	/** Note whether the link that a request shows is good. */
	public static void note(HttpServletRequest request, boolean good) {
		request.setAttribute(GOOD, good);
	}

	/**
	 * Whether a link was shown and is good, so that a refusal of what is asked with it is
	 * no sign of guessing; empty where none was shown.
	 */
	public static Optional<Boolean> noted(HttpServletRequest request) {
		return Optional.ofNullable((Boolean) request.getAttribute(GOOD));
	}

	/** The token that the browser has. */
	public Optional<String> read(HttpServletRequest request) {
		return Stream.ofNullable(request.getCookies())
			.flatMap(Arrays::stream)
			.filter((cookie) -> cookie.getName().equals(this.name))
			.map(Cookie::getValue)
			.filter((token) -> !token.isEmpty())
			.findFirst();
	}

	/** Let the browser keep a token until then. */
	public void give(HttpServletRequest request, HttpServletResponse response, String token, Instant now,
			Instant until) {
		add(request, response, token, Duration.between(now, until));
	}

	/** Let the browser forget it. */
	public void take(HttpServletRequest request, HttpServletResponse response) {
		add(request, response, "", Duration.ZERO);
	}

	private void add(HttpServletRequest request, HttpServletResponse response, String token, Duration life) {
		response.addHeader(HttpHeaders.SET_COOKIE,
				ResponseCookie.from(this.name, token)
					.path(request.getContextPath() + this.path)
					.httpOnly(true)
					.secure(request.isSecure())
					.sameSite("Lax")
					.maxAge(life)
					.build()
					.toString());
	}

}
