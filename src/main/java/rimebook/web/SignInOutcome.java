package rimebook.web;

import java.io.IOException;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.security.web.authentication.ForwardAuthenticationFailureHandler;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.security.web.savedrequest.RequestCache;

import rimebook.accounts.DoorRecord;
import rimebook.accounts.SignedIn;
import rimebook.pages.Network;

/**
 * Notes how a sign-in ended, and leads on: to the page asked for, or back to the form.
 */
class SignInOutcome extends SavedRequestAwareAuthenticationSuccessHandler implements AuthenticationFailureHandler {

	private final AuthenticationFailureHandler back = new ForwardAuthenticationFailureHandler("/sign-in/refused");

	private final ObjectProvider<DoorRecord> record;

	private final CrewCookie crew;

	/**
	 * @param record tests of single controllers have none
	 */
	SignInOutcome(ObjectProvider<DoorRecord> record, CrewCookie crew, RequestCache asked) {
		this.record = record;
		this.crew = crew;
		setRequestCache(asked);
		setDefaultTargetUrl("/desk");
	}

	@Override
	public void onAuthenticationSuccess(HttpServletRequest request, HttpServletResponse response,
			Authentication signedIn) throws ServletException, IOException {
		if (signedIn.getPrincipal() instanceof SignedIn person) {
			this.record.ifAvailable((kept) -> kept.signedIn(person, DeviceDescription.of(request).description()));
			this.crew.give(request, response);
		}
		super.onAuthenticationSuccess(request, response, signedIn);
	}

	@Override
	public void onAuthenticationFailure(HttpServletRequest request, HttpServletResponse response,
			AuthenticationException refusal) throws IOException, ServletException {
		String typed = request.getParameter("signInName");
		this.record.ifAvailable((kept) -> kept.failed((typed != null) ? typed : "", Network.of(request),
				DeviceDescription.of(request).description()));
		this.back.onAuthenticationFailure(request, response, refusal);
	}

}
