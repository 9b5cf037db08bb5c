package rimebook.web;

import java.util.Arrays;
import java.util.List;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.security.authentication.AuthenticationCredentialsNotFoundException;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.context.request.ServletWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;

import rimebook.accounts.Role;
import rimebook.accounts.SeatCodes;
import rimebook.accounts.SeatPrincipal;
import rimebook.accounts.SignedIn;
import rimebook.accounts.TeamLinks;
import rimebook.accounts.TeamPrincipal;
import rimebook.pages.Device;
import rimebook.shared.Actor;

/**
 * Gives controller methods who acts, for which seat or team, and from which device.
 */
class ActorArgumentResolver implements HandlerMethodArgumentResolver {

	private static final List<Class<?>> GIVEN = List.of(Actor.class, SeatCodes.Grant.class, TeamLinks.Pass.class,
			Device.class);

	@Override
	public boolean supportsParameter(MethodParameter parameter) {
		return GIVEN.contains(parameter.getParameterType());
	}

	@Override
	public Object resolveArgument(MethodParameter parameter, @Nullable ModelAndViewContainer container,
			NativeWebRequest webRequest, @Nullable WebDataBinderFactory binders) {
		HttpServletRequest request = ((ServletWebRequest) webRequest).getRequest();
		Device device = DeviceDescription.of(request);
		if (parameter.getParameterType() == Device.class) {
			return device;
		}
		Authentication signedIn = signedIn();
		if (parameter.getParameterType() == TeamLinks.Pass.class) {
			return team(signedIn).pass();
		}
		return (parameter.getParameterType() == SeatCodes.Grant.class) ? seat(signedIn)
				: actor(signedIn, RoutedPath.of(request), device);
	}

	private static Authentication signedIn() {
		Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
		if (authentication == null || !authentication.isAuthenticated()) {
			throw new AuthenticationCredentialsNotFoundException("Nobody is signed in.");
		}
		return authentication;
	}

	private static SeatCodes.Grant seat(Authentication signedIn) {
		if (signedIn.getPrincipal() instanceof SeatPrincipal principal) {
			return principal.seat();
		}
		throw new AuthenticationCredentialsNotFoundException("No seat is paired with this device.");
	}

	private static TeamPrincipal team(Authentication signedIn) {
		if (signedIn.getPrincipal() instanceof TeamPrincipal team) {
			return team;
		}
		throw new AuthenticationCredentialsNotFoundException("No link of a team is shown.");
	}

	private static Actor actor(Authentication signedIn, String path, Device device) {
		if (signedIn.getPrincipal() instanceof TeamPrincipal team) {
			return new Actor(team.identity(), team.getName(), TeamPrincipal.ROLE, device.description());
		}
		String role = PathRules.actedIn(roles(signedIn), path).word();
		Object who = signedIn.getPrincipal();
		if (who instanceof SignedIn person) {
			return new Actor("person:" + person.person().value(), person.displayName(), role, device.description());
		}
		if (who instanceof SeatPrincipal tablet) {
			return new Actor("seat:" + tablet.seat().seat(), tablet.getName(), role, device.description());
		}
		return new Actor(signedIn.getName(), role, device.description());
	}

	private static List<Role> roles(Authentication signedIn) {
		List<String> authorities = signedIn.getAuthorities().stream().map(GrantedAuthority::getAuthority).toList();
		return Arrays.stream(Role.values()).filter((role) -> authorities.contains(role.authority())).toList();
	}

}
