package rimebook.live;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

/**
 * What is around and behind a public page.
 *
 * @param path the page's own path
 * @param pageLanguage its language
 * @param home the list of competitions
 * @param signals where the page hears that it should fetch its moving part again,
 * {@code null} for a page that does not move
 * @param seen what it has shown, by segment
 */
record Frame(String path, PageLanguage pageLanguage, String home, @Nullable String signals, Map<String, Integer> seen) {

	/** The languages this page can be read in. */
	public List<Language> languages() {
		return PageLanguage.SPOKEN.stream().map(this::language).toList();
	}

	private Language language(Locale locale) {
		String code = locale.getLanguage();
		return new Language(code, locale.getDisplayLanguage(locale), this.path + "?lang=" + code,
				locale.equals(this.pageLanguage.locale()));
	}

	public boolean follows() {
		return this.signals != null;
	}

	/** Where the moving part alone is fetched. */
	public String part() {
		return this.path + "?part=live" + this.pageLanguage.query().replace('?', '&');
	}

	/** What it has shown, as JSON for the script. */
	public String seenText() {
		return this.seen.entrySet()
			.stream()
			.map((entry) -> "\"" + entry.getKey() + "\":" + entry.getValue())
			.collect(Collectors.joining(",", "{", "}"));
	}

	/** A language in its own name. */
	record Language(String code, String name, String href, boolean current) {
	}

}
