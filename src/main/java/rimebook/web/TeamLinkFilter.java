package rimebook.web;

import java.util.List;
import java.util.Optional;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.web.authentication.preauth.AbstractPreAuthenticatedProcessingFilter;
import org.springframework.security.web.context.RequestAttributeSecurityContextRepository;

import rimebook.accounts.LinkRefused;
import rimebook.accounts.TeamLinks;
import rimebook.accounts.TeamPrincipal;
import rimebook.pages.LinkCookie;

/**
 * Knows the managers of a team by the link that their browser keeps, for this one
 * request. Whoever shows one that opens nothing goes on as anybody else. Sessions are
 * neither made nor looked for: a person may be signed in in the same browser.
 */
class TeamLinkFilter extends AbstractPreAuthenticatedProcessingFilter {

	private static final String BROWSER = "a team's browser";

	private final ObjectProvider<TeamLinks> links;

	TeamLinkFilter(ObjectProvider<TeamLinks> links) {
		this.links = links;
		setAuthenticationManager(this::teamOf);
		setAuthenticationSuccessHandler((request, response, team) -> LinkCookie.note(request, true));
		setAuthenticationFailureHandler((request, response, refused) -> LinkCookie.note(request, false));
		setSecurityContextRepository(new RequestAttributeSecurityContextRepository());
		// The usual details would look for a session.
		setAuthenticationDetailsSource(HttpServletRequest::getRemoteAddr);
	}

	/** Tell whether a request shows a link that is good. */
	static boolean isGood(ObjectProvider<TeamLinks> links, HttpServletRequest request) {
		Optional<String> token = LinkCookie.OF_TEAM.read(request);
		TeamLinks known = links.getIfAvailable();
		return token.isPresent() && known != null && pass(known, token.get()).isPresent();
	}

	private static Optional<TeamLinks.Pass> pass(TeamLinks links, String token) {
		try {
			return Optional.of(links.pass(token));
		}
		catch (LinkRefused ex) {
			return Optional.empty();
		}
	}

	/** The token is the secret; what names the browser comes into the log. */
	@Override
	protected @Nullable Object getPreAuthenticatedPrincipal(HttpServletRequest request) {
		return LinkCookie.OF_TEAM.read(request).isPresent() ? BROWSER : null;
	}

	@Override
	protected @Nullable Object getPreAuthenticatedCredentials(HttpServletRequest request) {
		return LinkCookie.OF_TEAM.read(request).orElse(null);
	}

	private Authentication teamOf(Authentication browser) {
		return pass(this.links.getObject(), String.valueOf(browser.getCredentials()))
			.map((pass) -> UsernamePasswordAuthenticationToken.authenticated(new TeamPrincipal(pass), null,
					List.of(new SimpleGrantedAuthority(TeamPrincipal.AUTHORITY))))
			.orElseThrow(() -> new BadCredentialsException("The link opens nothing (any more)"));
	}

}
