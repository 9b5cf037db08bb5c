package rimebook.web;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.function.Predicate;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpFilter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;

/**
 * Refuses large bodies of whoever is not signed in, and files that are larger than any
 * taken where they are sent. Nothing of what a stranger sends is read; somebody of the
 * crew is heard out, since browsers show no answer before they have sent everything.
 * Programs have a limit of their own ({@link BodyLimitFilter}).
 */
class LargeBodyFilter extends HttpFilter {

	private static final long serialVersionUID = 1L;

	/** The largest form with a file, in bytes. */
	static final long MOST = 9L << 20;

	/** The same for music; as large as the server takes any. */
	static final long MOST_OF_MUSIC = 32L << 20;

	/** Whoever sends more is cut off, whoever it is. */
	private static final long HEARD_OUT = 128L << 20;

	private static final String MUSIC = "/desk/music/entry/";

	/** Where the managers of a team hand music in; they have no session. */
	static final String MUSIC_OF_TEAM = "/manager/music";

	private final transient Predicate<HttpServletRequest> team;

	/**
	 * @param team whether a request shows the link of a team that is good
	 */
	LargeBodyFilter(Predicate<HttpServletRequest> team) {
		this.team = team;
	}

	@Override
	protected void doFilter(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws IOException, ServletException {
		if (isTooLarge(request) || isLarge(request) && !isSignedIn(request) && !isOfTeam(request)) {
			request.setAttribute(DoorValve.UNREAD, true);
			if (request.getContentLengthLong() <= HEARD_OUT && isSignedIn(request)) {
				request.getInputStream().transferTo(OutputStream.nullOutputStream());
			}
			response.sendError(HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
			return;
		}
		chain.doFilter(request, response);
	}

	/** No browser sends a file without saying how large it is. */
	private static boolean isTooLarge(HttpServletRequest request) {
		String path = RoutedPath.of(request);
		long most = (path.startsWith(MUSIC) || path.startsWith(MUSIC_OF_TEAM)) ? MOST_OF_MUSIC : MOST;
		long length = request.getContentLengthLong();
		return isFile(request) && (length > most || length < 0);
	}

	/** What is led on to a page may say still of what kind its body was, and has none. */
	private static boolean isFile(HttpServletRequest request) {
		String type = request.getContentType();
		boolean hasBody = request.getContentLengthLong() > 0 || request.getHeader("Transfer-Encoding") != null;
		return hasBody && type != null && type.toLowerCase(Locale.ROOT).startsWith("multipart/");
	}

	private static boolean isLarge(HttpServletRequest request) {
		boolean form = !RoutedPath.isOfPrograms(RoutedPath.of(request));
		return form && (isFile(request) || request.getContentLengthLong() > DoorValve.SMALL
				|| request.getHeader("Transfer-Encoding") != null);
	}

	private boolean isOfTeam(HttpServletRequest request) {
		return RoutedPath.of(request).startsWith(MUSIC_OF_TEAM) && this.team.test(request);
	}

	private static boolean isSignedIn(HttpServletRequest request) {
		HttpSession session = request.getSession(false);
		return session != null
				&& session.getAttribute(HttpSessionSecurityContextRepository.SPRING_SECURITY_CONTEXT_KEY) != null;
	}

}
