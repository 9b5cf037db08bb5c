package rimebook.live;

import java.util.List;
import java.util.Locale;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;

import rimebook.wording.Languages;

/**
 * The language a public page is written in. A language that was chosen stays chosen,
 * since every link of the page carries it on; there is no cookie that would keep a page
 * out of shared caches.
 *
 * @param locale one of {@link Languages#SPOKEN}
 * @param chosen whether the visitor chose it on a page, with {@code ?lang=}
 */
record PageLanguage(Locale locale, boolean chosen) {

	static final List<Locale> SPOKEN = Languages.SPOKEN;

	/** Data for programs is the same in every language. */
	static final PageLanguage OF_PROGRAMS = new PageLanguage(Locale.ENGLISH, false);

	/** The language chosen, else the first one the browser asks for, else English. */
	static PageLanguage of(HttpServletRequest request) {
		Locale chosen = spoken(request.getParameter("lang"));
		return (chosen != null) ? new PageLanguage(chosen, true) : new PageLanguage(accepted(request), false);
	}

	private static @Nullable Locale spoken(@Nullable String language) {
		return SPOKEN.stream().filter((locale) -> locale.getLanguage().equals(language)).findFirst().orElse(null);
	}

	private static Locale accepted(HttpServletRequest request) {
		String header = request.getHeader("Accept-Language");
		if (header == null || header.length() > 500) {
			return Locale.ENGLISH;
		}
		try {
			Locale best = Locale.lookup(Locale.LanguageRange.parse(header), SPOKEN);
			return (best != null) ? best : Locale.ENGLISH;
		}
		catch (IllegalArgumentException ex) {
			return Locale.ENGLISH;
		}
	}

	/** What a link of the page carries on: {@code "?lang=fr"} or nothing. */
	String query() {
		return this.chosen ? "?lang=" + this.locale.getLanguage() : "";
	}

}
