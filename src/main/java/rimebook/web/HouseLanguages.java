package rimebook.web;

import java.util.Locale;
import java.util.Optional;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.web.servlet.LocaleResolver;

import rimebook.pages.LinkCookie;
import rimebook.wording.Languages;

/**
 * In which language a page is that is made for whoever asks: the desks' are English;
 * those of a team's managers are in the language that was chosen, which the browser
 * keeps, else in the first it asks for that is spoken here. Public pages choose by
 * themselves.
 */
class HouseLanguages implements LocaleResolver {

	@Override
	public Locale resolveLocale(HttpServletRequest request) {
		if (!RoutedPath.of(request).startsWith(LinkCookie.LANGUAGE_OF_TEAM.path())) {
			return Locale.ENGLISH;
		}
		return spoken(request.getParameter("lang"))
			.or(() -> LinkCookie.LANGUAGE_OF_TEAM.read(request).flatMap(HouseLanguages::spoken))
			.orElseGet(() -> accepted(request.getHeader("Accept-Language")));
	}

	@Override
	public void setLocale(HttpServletRequest request, @Nullable HttpServletResponse response, @Nullable Locale locale) {
		throw new UnsupportedOperationException("A language is chosen on a page");
	}

	private static Optional<Locale> spoken(@Nullable String language) {
		return Languages.SPOKEN.stream().filter((locale) -> locale.getLanguage().equals(language)).findFirst();
	}

	private static Locale accepted(@Nullable String header) {
		if (header == null || header.isEmpty() || header.length() > 500) {
			return Locale.ENGLISH;
		}
		try {
			return Optional.ofNullable(Locale.lookup(Locale.LanguageRange.parse(header), Languages.SPOKEN))
				.orElse(Locale.ENGLISH);
		}
		catch (IllegalArgumentException ex) {
			return Locale.ENGLISH;
		}
	}

}
