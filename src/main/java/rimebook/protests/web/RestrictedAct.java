package rimebook.protests.web;

import java.util.Arrays;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.security.access.AccessDeniedException;

/** Acts below one path that only some of its visitors may do. */
enum RestrictedAct {

	/** Deciding a protest. */
	DECIDE("REFEREE"),

	/** Proposing and approving corrections. */
	CORRECT("REFEREE", "ACCOUNTANT");

	private final String[] roles;

	RestrictedAct(String... roles) {
		this.roles = roles;
	}

	boolean isOf(HttpServletRequest request) {
		return Arrays.stream(this.roles).anyMatch(request::isUserInRole);
	}

	void require(HttpServletRequest request) {
		if (!isOf(request)) {
			throw new AccessDeniedException("Needs one of " + String.join(", ", this.roles));
		}
	}

}
