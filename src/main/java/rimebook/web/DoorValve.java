package rimebook.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.coyote.ActionCode;
import org.apache.coyote.ContinueResponseTiming;
import org.jspecify.annotations.Nullable;

/**
 * Stands before everything else and sees to it that no crowd keeps the crew waiting:
 * requests for public addresses, and of people nobody knows yet, have only so many
 * threads; the rest is the crew's. Small bodies are awaited here, so that no slow sender
 * holds anything further in.
 */
class DoorValve extends ValveBase {

	/** Set by whoever refuses a request without reading its body. */
	static final String UNREAD = DoorValve.class.getName() + ".unread";

	/** The largest body in bytes that is awaited here. */
	static final int SMALL = 64 * 1024;

	/** The largest body of a form that anybody may send, such as that for signing in. */
	static final int OF_A_STRANGER = 8 * 1024;

	private static final List<String> PUBLIC = List.of("/follow/", "/record-seen", "/offline", "/api/public/",
			"/api/openapi/", "/problems/");

	static final List<String> FILES = List.of("/css/", "/js/", "/img/", "/webjars/", "/favicon.ico");

	private static final List<String> FOR_STRANGERS = List.of("/sign-in", "/set-up", "/judge", "/api/seat-pairings");

	/** Bodies of unknown length or of files; browsers send neither but from a desk. */
	private static final int MOST_LARGE = 16;

	/** The same of people nobody knows, who are refused further in in any case. */
	private static final int MOST_LARGE_OF_STRANGERS = 4;

	/**
	 * How long somebody waits for a place. In a service that has run for a while all who
	 * are told of a standing are through within less; in its first minutes some are sent
	 * away and come again.
	 */
	private static final Duration MOMENT = Duration.ofSeconds(1);

	private final Places visitors;

	private final Places files;

	private final Places newcomers;

	private final Places large = new Places(MOST_LARGE, Duration.ZERO);

	private final Places largeOfStrangers = new Places(MOST_LARGE_OF_STRANGERS, Duration.ZERO);

	/**
	 * Where managers of teams hand music in. Strangers are turned away from there before
	 * a byte of theirs is read, so they cannot hold a place.
	 */
	private final Places largeOfTeams = new Places(MOST_LARGE / 2, MOMENT);

	private final Arrivals arrivals;

	private final Arrivals arrivalsOfStrangers;

	private final Predicate<HttpServletRequest> crew;

	private final Drain drain;

	/**
	 * @param crew whether a request shows something that the service signed; that
	 * somebody sends a cookie of the right name means nothing
	 */
	DoorValve(DoorSettings settings, Predicate<HttpServletRequest> crew, Drain drain) {
		super(true);
		this.drain = drain;
		this.crew = crew;
		this.visitors = new Places(settings.visitors(), MOMENT);
		this.files = new Places(settings.files(), MOMENT);
		this.newcomers = new Places(settings.newcomers(), MOMENT);
		this.arrivals = new Arrivals(settings.bodies(), settings.patience());
		this.arrivalsOfStrangers = new Arrivals(settings.bodies(), settings.patience());
	}

	@Override
	public void invoke(Request request, Response response) throws IOException, ServletException {
		String path = path(request);
		if (this.drain.isOn()) {
			response.setHeader("Connection", "close");
			if (Drain.MAY_BE_ASKED_TWICE.contains(request.getMethod()) && !path.startsWith(Drain.HEALTH)) {
				goElsewhere(request, response);
				return;
			}
		}
		if (isLarge(request)) {
			letIn(large(path, request), request, response);
		}
		else if (hasBody(request) && !isHere(path, request, response)) {
			request.getCoyoteRequest().action(ActionCode.DISABLE_SWALLOW_INPUT, null);
		}
		else {
			letIn(places(path, request), request, response);
		}
	}

	private Places large(String path, Request request) {
		if (path.startsWith(LargeBodyFilter.MUSIC_OF_TEAM)) {
			return this.largeOfTeams;
		}
		return this.crew.test(request) ? this.large : this.largeOfStrangers;
	}

	private static void goElsewhere(Request request, Response response) throws IOException {
		request.getCoyoteRequest().action(ActionCode.DISABLE_SWALLOW_INPUT, null);
		answer(response, HttpServletResponse.SC_BAD_GATEWAY, "This node is going out of service. Ask the other one.");
	}

	/**
	 * The path as it is routed; empty where the server could make nothing of the address.
	 */
	private static String path(Request request) {
		String decoded = request.getDecodedRequestURI();
		return (decoded != null) ? decoded : "";
	}

	private static boolean hasBody(Request request) {
		return request.getContentLengthLong() > 0;
	}

	private static boolean isLarge(Request request) {
		String type = request.getContentType();
		return request.getHeader("Transfer-Encoding") != null || request.getContentLengthLong() > SMALL
				|| hasBody(request) && type != null && type.toLowerCase(Locale.ROOT).startsWith("multipart/");
	}

	/** Await the body of a request; if it is too large or too late, answer so. */
	private boolean isHere(String path, Request request, Response response) throws IOException {
		if (request.getContentLengthLong() > OF_A_STRANGER && fits(path, FOR_STRANGERS)) {
			answer(response, HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE, "This form is larger than it can be.");
			return false;
		}
		response.sendAcknowledgement(ContinueResponseTiming.IMMEDIATELY);
		if (!(this.crew.test(request) ? this.arrivals : this.arrivalsOfStrangers).await(request)) {
			answer(response, HttpServletResponse.SC_REQUEST_TIMEOUT,
					"The request did not arrive in time. Send it again.");
			return false;
		}
		return true;
	}

	private @Nullable Places places(String path, Request request) {
		if ("/".equals(path) || fits(path, PUBLIC)) {
			return this.visitors;
		}
		if (fits(path, FILES)) {
			return this.files;
		}
		return this.crew.test(request) ? null : this.newcomers;
	}

	/** Tell whether a path begins with one of these. */
	static boolean fits(String path, List<String> beginnings) {
		return beginnings.stream().anyMatch(path::startsWith);
	}

	private void letIn(@Nullable Places places, Request request, Response response)
			throws IOException, ServletException {
		if (places != null && !places.take()) {
			response.setHeader("Retry-After", "2");
			answer(response, HttpServletResponse.SC_SERVICE_UNAVAILABLE,
					"Too many ask at once. Try again in a moment.");
			return;
		}
		try {
			CrowdConnections.forCrowd(places != null && places != this.large);
			getNext().invoke(request, response);
		}
		finally {
			CrowdConnections.forCrowd(false);
			if (places != null) {
				places.leave();
			}
			if (request.getAttribute(UNREAD) != null) {
				request.getCoyoteRequest().action(ActionCode.DISABLE_SWALLOW_INPUT, null);
			}
		}
	}

	private static void answer(Response response, int status, String sentence) throws IOException {
		response.setStatus(status);
		response.setContentType("text/plain;charset=UTF-8");
		response.setHeader("Connection", "close");
		response.setHeader("Cache-Control", "no-store");
		response.getOutputStream().write((sentence + "\n").getBytes(StandardCharsets.UTF_8));
		response.flushBuffer();
	}

}
