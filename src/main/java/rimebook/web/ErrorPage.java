package rimebook.web;

import java.util.Set;

import org.springframework.web.servlet.ModelAndView;

/** Chooses the page that tells a person why something was not done. */
final class ErrorPage {

	private static final Set<Integer> OWN_PAGE = Set.of(403, 404, 409, 413, 422, 429);

	private ErrorPage() {
	}

	static ModelAndView of(Refusal refusal) {
		ModelAndView page = new ModelAndView("error/" + name(refusal.status().value()));
		page.setStatus(refusal.status());
		page.addObject("refusal", refusal);
		SignedInInterceptor.name(page);
		return page;
	}

	private static String name(int status) {
		if (OWN_PAGE.contains(status)) {
			return Integer.toString(status);
		}
		return (status < 500) ? "4xx" : "5xx";
	}

}
