package rimebook.web;

import java.io.IOException;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;
import org.springframework.security.web.csrf.CsrfException;

import rimebook.accounts.DoorRecord;
import rimebook.accounts.SignedIn;

/**
 * What a person meets at a closed door: the sign-in page, a page that says no, or, where
 * the house has no such door, a page that says so.
 */
class PageRefusal implements AuthenticationEntryPoint, AccessDeniedHandler {

	private final ObjectProvider<DoorRecord> record;

	private final AuthenticationEntryPoint signIn = new LoginUrlAuthenticationEntryPoint("/sign-in");

	/**
	 * @param record tests of single controllers have none
	 */
	PageRefusal(ObjectProvider<DoorRecord> record) {
		this.record = record;
	}

	@Override
	public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException refusal)
			throws IOException, ServletException {
		if (PathRules.know(RoutedPath.of(request))) {
			this.signIn.commence(request, response, refusal);
		}
		else {
			response.sendError(HttpStatus.NOT_FOUND.value());
		}
	}

	@Override
	public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refusal)
			throws IOException {
		if (refusal instanceof CsrfException) {
			request.setAttribute(ErrorPageController.REFUSAL, Refusal.formTooOld());
		}
		boolean known = PathRules.know(RoutedPath.of(request));
		if (known && !(refusal instanceof CsrfException)) {
			note(request);
		}
		response.sendError((known ? HttpStatus.FORBIDDEN : HttpStatus.NOT_FOUND).value());
	}

	private void note(HttpServletRequest request) {
		Authentication signedIn = SecurityContextHolder.getContext().getAuthentication();
		if (signedIn != null && signedIn.getPrincipal() instanceof SignedIn person) {
			this.record.ifAvailable((kept) -> kept.refused(person, RoutedPath.of(request),
					DeviceDescription.of(request).description()));
		}
	}

}
