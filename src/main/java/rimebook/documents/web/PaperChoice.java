package rimebook.documents.web;

import java.util.List;
import java.util.Locale;

import rimebook.documents.PaperSize;
import rimebook.wording.Languages;

/**
 * For which sheet and reader a document is laid out.
 */
record PaperChoice(PaperSize paper, Locale locale) {

	static final List<Locale> LANGUAGES = Languages.SPOKEN;

	/** As chosen; A4 in English where nothing known was. */
	static PaperChoice of(String paper, String language) {
		return new PaperChoice(
				List.of(PaperSize.values())
					.stream()
					.filter((size) -> size.word().equals(paper))
					.findFirst()
					.orElse(PaperSize.A4),
				LANGUAGES.stream()
					.filter((locale) -> locale.getLanguage().equals(language))
					.findFirst()
					.orElse(Locale.ENGLISH));
	}

	public List<PaperSize> papers() {
		return List.of(PaperSize.values());
	}

	public List<Locale> languages() {
		return LANGUAGES;
	}

	/** What the links of a page carry on. */
	public String query() {
		return "paper=" + this.paper.word() + "&language=" + this.locale.getLanguage();
	}

}
