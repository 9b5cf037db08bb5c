package rimebook.live;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;

import rimebook.pages.DoorAnswers;

/**
 * What is rendered once: a path, whole or only its moving part, in one language.
 *
 * @param path the path within the application, decoded
 * @param part whether only the part that follows is asked for
 * @param pageLanguage the language
 */
record RenditionKey(String path, boolean part, PageLanguage pageLanguage) {

	/** What makes an address another one after each signal, and nothing else. */
	private static final Pattern MOMENT = Pattern.compile("moment=\\d{1,10}");

	static RenditionKey of(HttpServletRequest request) {
		String path = path(request);
		if (path.startsWith("/api/") || isPoll(path)) {
			return new RenditionKey(path, false, PageLanguage.OF_PROGRAMS);
		}
		return new RenditionKey(path, "live".equals(request.getParameter("part")), PageLanguage.of(request));
	}

	/** What a query of the pages' own asks for; {@code null} for any other query. */
	static @Nullable RenditionKey of(DoorAnswers.Asked asked) {
		boolean part = false;
		Locale chosen = null;
		for (String one : asked.query().isEmpty() ? List.<String>of() : List.of(asked.query().split("&", -1))) {
			Locale spoken = PageLanguage.named(one);
			if ("part=live".equals(one) && !part) {
				part = true;
			}
			else if (spoken != null && chosen == null) {
				chosen = spoken;
			}
			else if (!MOMENT.matcher(one).matches()) {
				return null;
			}
		}
		if (asked.path().startsWith("/api/") || isPoll(asked.path())) {
			return new RenditionKey(asked.path(), false, PageLanguage.OF_PROGRAMS);
		}
		return new RenditionKey(asked.path(), part, PageLanguage.of(chosen, asked.acceptLanguage()));
	}

	/** The part that follows of the same page. */
	RenditionKey ofPart() {
		return this.part ? this : new RenditionKey(this.path, true, this.pageLanguage);
	}

	/** Tell whether it is what pages without a stream ask for every few seconds. */
	boolean isPoll() {
		return isPoll(this.path);
	}

	private static boolean isPoll(String path) {
		return path.startsWith("/follow/") && path.endsWith("/moments");
	}

	/**
	 * Decoded and without parameters of the path, so that one page written in many ways
	 * is kept once.
	 */
	private static String path(HttpServletRequest request) {
		String rest = request.getPathInfo();
		return (rest != null) ? request.getServletPath() + rest : request.getServletPath();
	}

}
