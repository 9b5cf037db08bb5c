package rimebook.web;

import java.util.List;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;

import rimebook.accounts.Role;
import rimebook.accounts.SignedIn;

/**
 * Lets the layout of the desks show who is signed in, under the name on the record, and
 * the door know them again.
 */
class SignedInInterceptor implements HandlerInterceptor {

	private final CrewCookie crew;

	SignedInInterceptor(CrewCookie crew) {
		this.crew = crew;
	}

	@Override
	public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
		this.crew.give(request, response);
		return true;
	}

	@Override
	public void postHandle(HttpServletRequest request, HttpServletResponse response, Object handler,
			@Nullable ModelAndView page) {
		Authentication signedIn = SecurityContextHolder.getContext().getAuthentication();
		if (page != null && isShown(page) && signedIn != null && signedIn.getPrincipal() instanceof SignedIn) {
			name(page);
			PathRule rule = PathRules.of(RoutedPath.of(request));
			if (rule.isReadOnlyFor(WaitingWork.roles(signedIn))) {
				page.addObject("changedBy", others(rule));
			}
		}
	}

	/**
	 * Let a page show the name on the record of the person who is signed in. The name to
	 * sign in with is half of a key and stands on no page that somebody else may look at.
	 */
	static void name(ModelAndView page) {
		Authentication signedIn = SecurityContextHolder.getContext().getAuthentication();
		if (signedIn != null && signedIn.getPrincipal() instanceof SignedIn person) {
			page.addObject("signedInAs", person.displayName());
		}
	}

	/** Who else may change something on a page, without the administrator. */
	private static List<Role> others(PathRule rule) {
		return rule.writers().stream().filter((role) -> role != Role.ADMINISTRATOR).sorted().toList();
	}

	private static boolean isShown(ModelAndView page) {
		return page.getViewName() != null && !page.getViewName().startsWith("redirect:");
	}

}
