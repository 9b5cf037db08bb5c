package rimebook.live;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletResponse;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.coyote.ActionCode;
import org.apache.coyote.UpgradeToken;
import org.jspecify.annotations.Nullable;

import rimebook.shared.NotFoundException;

/**
 * Opens the stream of signals of a competition. It begins with where everything stands,
 * so that a browser which was away for a while (and says so with {@code Last-Event-ID})
 * needs no more than one that comes for the first time. The answer has no length and ends
 * with the connection, which is taken over from the server ({@link StreamLine}).
 */
class SignalsValve extends ValveBase {

	private static final Pattern SIGNALS = Pattern.compile("/follow/([^/]+)/signals");

	/** A page is kept under its path; a longer one there is none. */
	private static final int LONGEST = 300;

	private final MomentWatch watch;

	private final FollowerRegister followers;

	private final PollPace pace;

	private final Clock clock;

	SignalsValve(MomentWatch watch, FollowerRegister followers, PollPace pace, Clock clock) {
		super(true);
		this.watch = watch;
		this.followers = followers;
		this.pace = pace;
		this.clock = clock;
	}

	@Override
	public void invoke(Request request, Response response) throws IOException, ServletException {
		String slug = competition(request);
		if (slug == null || !isThere(slug)) {
			getNext().invoke(request, response);
			return;
		}
		StreamLine line = new StreamLine();
		Optional<Follower> follower = "HTTP/1.1".equals(request.getProtocol())
				? this.followers.join(slug, request.getRemoteAddr(), wish(slug, request), line) : Optional.empty();
		if (follower.isEmpty()) {
			refuse(request, response);
			return;
		}
		open(slug, line, follower.get(), request, response);
	}

	/** What a page asks for whose reader wants to see at once what moved. */
	private static StreamWish wish(String slug, Request request) {
		boolean packed = Answer.takesGzip(request.getHeader("Accept-Encoding"));
		String page = request.getParameter("page");
		String base = request.getContextPath() + "/follow/" + slug;
		if (page == null || page.length() > LONGEST || !(page + "/").startsWith(base + "/")) {
			return new StreamWish(null, packed);
		}
		String path = page.substring(request.getContextPath().length());
		return new StreamWish(new RenditionKey(path, true, PageLanguage.of(request)), packed);
	}

	private static @Nullable String competition(Request request) {
		String decoded = request.getDecodedRequestURI();
		if (!"GET".equals(request.getMethod()) || decoded == null) {
			return null;
		}
		String path = decoded.substring(request.getContextPath().length());
		Matcher matcher = SIGNALS.matcher(path);
		return matcher.matches() ? matcher.group(1) : null;
	}

	private boolean isThere(String slug) {
		try {
			this.watch.current(slug);
			return true;
		}
		catch (NotFoundException ex) {
			return false;
		}
	}

	private void open(String slug, StreamLine line, Follower follower, Request request, Response response)
			throws IOException {
		try {
			line.carry(follower);
			follower.tell(this.watch.current(slug).all(), this.clock.instant());
			follower.beat(this.followers.within(), this.clock.instant());
			request.getCoyoteRequest().action(ActionCode.UPGRADE, new UpgradeToken(line, null, null, null));
			response.setStatus(HttpServletResponse.SC_OK);
			response.setContentType("text/event-stream;charset=UTF-8");
			response.setHeader(OtherSites.ALLOWED, OtherSites.EVERYBODY);
			response.setHeader("Cache-Control", "no-store");
			response.setHeader("X-Accel-Buffering", "no");
			if (follower.isPacked()) {
				response.setHeader("Content-Encoding", "gzip");
			}
			response.setHeader("X-Content-Type-Options", "nosniff");
			response.setHeader("Connection", "close");
			response.flushBuffer();
		}
		catch (IOException | RuntimeException ex) {
			follower.leave();
			throw ex;
		}
	}

	private void refuse(Request request, Response response) throws IOException {
		response.setStatus(HttpServletResponse.SC_SERVICE_UNAVAILABLE);
		response.setContentType("text/plain;charset=UTF-8");
		response.setHeader("Cache-Control", "no-store");
		response.setHeader("Retry-After", Long.toString(this.pace.next()));
		response.setHeader("Connection", "close");
		String moments = request.getDecodedRequestURI().replaceFirst("signals$", "moments");
		response.getOutputStream()
			.write(("No stream is free. Ask " + moments + " every few seconds.\n").getBytes(StandardCharsets.UTF_8));
	}

}
