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
 * @param since the tag of the part that whoever asks has, empty for none
 */
record RenditionKey(String path, boolean part, PageLanguage pageLanguage, String since) {

	/** What makes an address another one after each signal, and nothing else. */
	private static final Pattern MOMENT = Pattern.compile("moment=\\d{1,10}");

	private static final Pattern TAG = Pattern.compile("[0-9a-f]{12}");

	private static final String SINCE = "since";

	RenditionKey(String path, boolean part, PageLanguage pageLanguage) {
		this(path, part, pageLanguage, "");
	}

	static RenditionKey of(HttpServletRequest request) {
		String path = path(request);
		if (path.startsWith("/api/") || isPoll(path)) {
			return new RenditionKey(path, false, PageLanguage.OF_PROGRAMS);
		}
		boolean part = "live".equals(request.getParameter("part"));
		String since = request.getParameter(SINCE);
		return new RenditionKey(path, part, PageLanguage.of(request),
				(part && since != null && TAG.matcher(since).matches()) ? since : "");
	}

	/** What a query of the pages' own asks for; {@code null} for any other query. */
	static @Nullable RenditionKey of(DoorAnswers.Asked asked) {
		boolean part = false;
		String since = "";
		Locale chosen = null;
		for (String one : asked.query().isEmpty() ? List.<String>of() : List.of(asked.query().split("&", -1))) {
			Locale spoken = PageLanguage.named(one);
			if ("part=live".equals(one) && !part) {
				part = true;
			}
			else if (spoken != null && chosen == null) {
				chosen = spoken;
			}
			else if (part && since.isEmpty() && isSince(one)) {
				since = one.substring(SINCE.length() + 1);
			}
			else if (!MOMENT.matcher(one).matches()) {
				return null;
			}
		}
		if (asked.path().startsWith("/api/") || isPoll(asked.path())) {
			return new RenditionKey(asked.path(), false, PageLanguage.OF_PROGRAMS);
		}
		return new RenditionKey(asked.path(), part, PageLanguage.of(chosen, asked.acceptLanguage()), since);
	}

	private static boolean isSince(String parameter) {
		return parameter.startsWith(SINCE + "=") && TAG.matcher(parameter.substring(SINCE.length() + 1)).matches();
	}

	/** The part that follows of the same page, whole. */
	RenditionKey ofPart() {
		return new RenditionKey(this.path, true, this.pageLanguage);
	}

	/** The same for whoever has nothing of it. */
	RenditionKey whole() {
		return this.since.isEmpty() ? this : new RenditionKey(this.path, this.part, this.pageLanguage);
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
