package rimebook.web;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.converter.json.ProblemDetailJacksonMixin;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.web.util.UriComponentsBuilder;
import tools.jackson.databind.json.JsonMapper;

/** What a program meets at a closed door, before any controller is asked. */
class ProblemWriter implements AuthenticationEntryPoint, AccessDeniedHandler {

	private static final JsonMapper JSON = JsonMapper.builder()
		.addMixIn(ProblemDetail.class, ProblemDetailJacksonMixin.class)
		.build();

	@Override
	public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException refusal)
			throws IOException {
		refuse(request, response, HttpStatus.UNAUTHORIZED);
	}

	@Override
	public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refusal)
			throws IOException {
		refuse(request, response, HttpStatus.FORBIDDEN);
	}

	private static void refuse(HttpServletRequest request, HttpServletResponse response, HttpStatus status)
			throws IOException {
		boolean known = PathRules.know(RoutedPath.of(request));
		write(Refusal.ofStatus(known ? status : HttpStatus.NOT_FOUND), request, response);
	}

	static void write(Refusal refusal, HttpServletRequest request, HttpServletResponse response) throws IOException {
		response.setStatus(refusal.status().value());
		response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
		response.getOutputStream().write(JSON.writeValueAsBytes(problem(refusal, request.getRequestURI())));
	}

	/**
	 * The body of a refused request to {@code /api} (RFC 9457), with members of our own:
	 * {@code code} is stable and for programs, {@code errors} are the fields at fault,
	 * with sentences in English as {@code detail}; {@code reference} is what to quote
	 * when asking about it, empty unless it was a bug, {@code received} is what is there
	 * instead of what was sent, such as the version of a card that was received before,
	 * and left out where there is nothing to show.
	 * @param path the path asked for
	 */
	static ProblemDetail problem(Refusal refusal, String path) {
		ProblemDetail problem = ProblemDetail.forStatusAndDetail(refusal.status(), refusal.sentence().english());
		problem.setType(URI.create("/problems/" + refusal.code()));
		problem.setTitle(refusal.title());
		problem.setInstance(address(path));
		problem.setProperty("code", refusal.code());
		problem.setProperty("errors", refusal.errors().stream().map(Member::of).toList());
		problem.setProperty("reference", refusal.reference());
		if (refusal.received() != null) {
			problem.setProperty("received", refusal.received());
		}
		return problem;
	}

	/** A field at fault, as programs read it. */
	private record Member(String field, String message) {

		private static Member of(Refusal.Fault fault) {
			return new Member(fault.field(), fault.sentence().english());
		}

	}

	/** Whoever asks for what is no address gets it back as one. */
	private static URI address(String path) {
		try {
			return new URI(path);
		}
		catch (URISyntaxException ex) {
			return UriComponentsBuilder.fromPath(path).build().encode().toUri();
		}
	}

}
