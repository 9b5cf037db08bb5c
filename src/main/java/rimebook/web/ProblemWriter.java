package rimebook.web;

import java.io.IOException;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import tools.jackson.databind.json.JsonMapper;

/** What a program meets at a closed door, before any controller is asked. */
class ProblemWriter implements AuthenticationEntryPoint, AccessDeniedHandler {

	private static final JsonMapper JSON = JsonMapper.shared();

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
		response.getOutputStream().write(JSON.writeValueAsBytes(Problem.of(refusal, request.getRequestURI())));
	}

}
