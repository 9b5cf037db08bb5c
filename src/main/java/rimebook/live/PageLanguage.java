package rimebook.live;

import java.util.List;
import java.util.Locale;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
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
public record PageLanguage(Locale locale, boolean chosen) {

	public static final List<Locale> SPOKEN = Languages.SPOKEN;

	/** Data for programs is the same in every language. */
	static final PageLanguage OF_PROGRAMS = new PageLanguage(Locale.ENGLISH, false);

	/** What browsers ask for; of a crowd most ask for the same. */
	private static final Cache<String, Locale> ACCEPTED = Caffeine.newBuilder().maximumSize(500).build();

	/** The language chosen, else the first one the browser asks for, else English. */
	public static PageLanguage of(HttpServletRequest request) {
		Locale chosen = spoken(request.getParameter("lang"));
		return of(chosen, request.getHeader("Accept-Language"));
	}

	/** The same, where a language was chosen or not. */
	static PageLanguage of(@Nullable Locale chosen, @Nullable String accepted) {
		return (chosen != null) ? new PageLanguage(chosen, true) : new PageLanguage(accepted(accepted), false);
	}

	/** The language that a parameter such as {@code lang=fi} chooses. */
	static @Nullable Locale named(String parameter) {
		return parameter.startsWith("lang=") ? spoken(parameter.substring(5)) : null;
	}

	private static @Nullable Locale spoken(@Nullable String language) {
		return SPOKEN.stream().filter((locale) -> locale.getLanguage().equals(language)).findFirst().orElse(null);
	}

	private static Locale accepted(@Nullable String header) {
		if (header == null || header.isEmpty() || header.length() > 500) {
			return Locale.ENGLISH;
		}
		return ACCEPTED.get(header, PageLanguage::best);
	}

	private static Locale best(String header) {
		try {
			Locale best = Locale.lookup(Locale.LanguageRange.parse(header), SPOKEN);
			return (best != null) ? best : Locale.ENGLISH;
		}
		catch (IllegalArgumentException ex) {
			return Locale.ENGLISH;
		}
	}

	/** What a link of the page carries on: {@code "?lang=fr"} or nothing. */
	public String query() {
		return this.chosen ? "?lang=" + this.locale.getLanguage() : "";
	}

}
