package rimebook.web;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

import rimebook.accounts.CodeGuessing;
import rimebook.accounts.DoorRecord;
import rimebook.accounts.SignInName;
import rimebook.pages.LinkCookie;
import rimebook.pages.Network;
import rimebook.web.AttemptLimits.Attempt;
import rimebook.wording.Sentence;

/**
 * Slows down whoever guesses at passwords, seat codes, the set-up link, or the link of a
 * commentator or a team.
 */
class AttemptFilter extends OncePerRequestFilter {

	private static final Set<String> SEAT_PATHS = Set.of("/judge", "/api/seat-pairings");

	private static final String SIGN_IN = "/sign-in";

	private static final String COMMENTARY = "/commentary";

	private static final String MANAGER = "/manager";

	private static final int NAME_PER_MINUTE = 10;

	private static final int ADDRESS_PER_MINUTE = 60;

	private static final int SEAT_PER_MINUTE = 20;

	private static final int NOTED_PER_MINUTE = 20;

	/** From everywhere together: with a million addresses one is no faster. */
	private static final int ACCOUNT_PER_HOUR = 60;

	private static final CodeGuessing.Permit OPEN = new CodeGuessing.Permit(Duration.ZERO, "");

	private final AttemptLimits limits;

	private final KnownPlaces places;

	private final ObjectProvider<CodeGuessing> guesses;

	private final ObjectProvider<DoorRecord> record;

	/**
	 * @param guesses knows the networks that are stopped from guessing seat codes, for
	 * all nodes; tests of single controllers have none
	 * @param record nor have they that
	 */
	AttemptFilter(AttemptLimits limits, KnownPlaces places, ObjectProvider<CodeGuessing> guesses,
			ObjectProvider<DoorRecord> record) {
		this.record = record;
		this.limits = limits;
		this.places = places;
		this.guesses = guesses;
	}

	@Override
	protected boolean shouldNotFilter(HttpServletRequest request) {
		return !"POST".equals(request.getMethod()) && !isCommentary(RoutedPath.of(request)) && !isGuessAtTeams(request);
	}

	/**
	 * There a token comes with a cookie, too, so it can be guessed at with any request.
	 */
	private static boolean isCommentary(String path) {
		return isAt(COMMENTARY, path);
	}

	/** There, too, where one is shown or sent. */
	private static boolean isGuessAtTeams(HttpServletRequest request) {
		String path = RoutedPath.of(request);
		boolean sent = path.equals(MANAGER) && "POST".equals(request.getMethod());
		return sent || isAt(MANAGER, path) && LinkCookie.OF_TEAM.read(request).isPresent();
	}

	private static boolean isAt(String place, String path) {
		return path.equals(place) || path.startsWith(place + "/");
	}

	@Override
	protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		boolean seatCode = SEAT_PATHS.contains(RoutedPath.of(request));
		CodeGuessing.Permit door = seatCode ? door(request) : OPEN;
		if (!door.pause().isZero()) {
			refuse(door.pause(), request, response);
			return;
		}
		List<Attempt> attempts = attempts(request, door.turn());
		for (Attempt attempt : attempts) {
			Duration wait = this.limits.take(attempt);
			if (!wait.isZero()) {
				refuse(seatCode ? stop(request, wait) : noted(request, wait), request, response);
				return;
			}
		}
		chain.doFilter(request, response);
		if (isNoGuess(request, response)) {
			attempts.forEach(this.limits::giveBack);
			remember(request);
		}
	}

	/**
	 * A link that is good makes no guess of a form that is refused or of something that
	 * is not there, and one that opens nothing stays a guess when it is led away.
	 */
	private static boolean isNoGuess(HttpServletRequest request, HttpServletResponse response) {
		return LinkCookie.noted(request).orElse(response.getStatus() < HttpStatus.BAD_REQUEST.value());
	}

	private void remember(HttpServletRequest request) {
		if (SIGN_IN.equals(RoutedPath.of(request))) {
			this.places.remember(name(request), Network.of(request));
		}
	}

	private CodeGuessing.Permit door(HttpServletRequest request) {
		CodeGuessing known = this.guesses.getIfAvailable();
		return (known != null) ? known.door(Network.of(request)) : OPEN;
	}

	private Duration stop(HttpServletRequest request, Duration wait) {
		CodeGuessing known = this.guesses.getIfAvailable();
		return (known != null) ? known.stop(Network.of(request), DeviceDescription.of(request).description()) : wait;
	}

	/** Being refused costs nothing, so noting it must not either: a few a minute. */
	private Duration noted(HttpServletRequest request, Duration wait) {
		String network = Network.of(request);
		if (this.limits.take(Attempt.perMinute("noted " + network, 1)).isZero()
				&& this.limits.take(Attempt.perMinute("noted", NOTED_PER_MINUTE)).isZero()) {
			this.record.ifAvailable((kept) -> kept.stopped(network, DeviceDescription.of(request).description()));
		}
		return wait;
	}

	private List<Attempt> attempts(HttpServletRequest request, String turn) {
		String path = RoutedPath.of(request);
		String network = Network.of(request);
		if (path.startsWith("/set-up/")) {
			return List.of(Attempt.perMinute("set-up " + network, NAME_PER_MINUTE));
		}
		if (isCommentary(path)) {
			return List.of(Attempt.perMinute("commentary " + network, SEAT_PER_MINUTE));
		}
		if (isGuessAtTeams(request)) {
			return List.of(Attempt.perMinute("team " + network, SEAT_PER_MINUTE));
		}
		if (SEAT_PATHS.contains(path)) {
			return List.of(Attempt.perMinute("seat " + network + " " + turn, SEAT_PER_MINUTE));
		}
		if (path.startsWith("/desk/results/") && path.endsWith("/signature")) {
			return List.of(Attempt.perMinute("signature " + signedIn(), NAME_PER_MINUTE));
		}
		if ("/desk/own-password".equals(path)) {
			return List.of(Attempt.perMinute("own password " + signedIn(), NAME_PER_MINUTE));
		}
		return SIGN_IN.equals(path) ? signIn(name(request), network) : List.of();
	}

	private List<Attempt> signIn(String name, String network) {
		List<Attempt> attempts = new ArrayList<>();
		attempts.add(Attempt.perMinute("sign-in " + network, ADDRESS_PER_MINUTE));
		attempts.add(Attempt.perMinute("sign-in " + network + " " + name, NAME_PER_MINUTE));
		if (!this.places.know(name, network)) {
			attempts.add(Attempt.perHour("account " + name, ACCOUNT_PER_HOUR));
		}
		return attempts;
	}

	/** A signature asks for the password of the one who is signed in. */
	private static String signedIn() {
		Authentication person = SecurityContextHolder.getContext().getAuthentication();
		return (person != null) ? person.getName() : "";
	}

	private static String name(HttpServletRequest request) {
		return SignInName.typed(request.getParameter("signInName"));
	}

	private void refuse(Duration wait, HttpServletRequest request, HttpServletResponse response) throws IOException {
		long seconds = wait.toSeconds() + 1;
		response.setHeader(HttpHeaders.RETRY_AFTER, Long.toString(seconds));
		Refusal refusal = Refusal.of(HttpStatus.TOO_MANY_REQUESTS, "too-many-attempts",
				Sentence.of("web.too-many-attempts", Math.toIntExact(seconds)));
		if (RoutedPath.isOfPrograms(RoutedPath.of(request))) {
			ProblemWriter.write(refusal, request, response);
			return;
		}
		request.setAttribute(ErrorPageController.REFUSAL, refusal);
		response.sendError(refusal.status().value());
	}

}
