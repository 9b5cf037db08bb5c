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
import rimebook.pages.Device;
import rimebook.shared.Actor;

/** Gives controller methods who acts, for which seat, and from which device. */
class ActorArgumentResolver implements HandlerMethodArgumentResolver {

	private static final List<Class<?>> GIVEN = List.of(Actor.class, SeatCodes.Grant.class, Device.class);

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

	private static Actor actor(Authentication signedIn, String path, Device device) {
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
