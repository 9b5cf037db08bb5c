package rimebook.timetable.web;

import java.util.List;
import java.util.Locale;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.pages.Given;
import rimebook.shared.RuleViolationException;
import rimebook.timetable.TimetableLetters;
import rimebook.wording.Sentence;

/**
 * Which letters are printed.
 *
 * @param from the version that people know, 0 for the one before the newest
 * @param to the version that they are told of, 0 for the newest
 * @param languages their codes
 * @param club its name, empty for all
 */
record LettersForm(@Nullable Integer from, @Nullable Integer to, @Nullable List<String> languages,
		@Nullable String club) {

	static final List<String> LANGUAGES = List.of("en", "fr", "fi");

	/**
	 * @param newest the number of the newest version
	 */
	static LettersForm of(int from, int newest) {
		int known = (from < 1 || from >= newest) ? newest - 1 : from;
		return new LettersForm(known, newest, List.of("en"), "");
	}

	/** With the versions that 0 stands for. */
	static LettersForm of(int from, int to, int newest, List<String> languages, String club) {
		int told = (to < 1) ? newest : to;
		return new LettersForm((from < 1) ? told - 1 : from, told, languages, club);
	}

	TimetableLetters.Between between(CompetitionId competition) {
		return new TimetableLetters.Between(competition, (this.from != null) ? this.from : 0,
				(this.to != null) ? this.to : 0);
	}

	List<Locale> locales() {
		List<Locale> chosen = LANGUAGES.stream()
			.filter((code) -> this.languages != null && this.languages.contains(code))
			.map(Locale::forLanguageTag)
			.toList();
		if (chosen.isEmpty()) {
			throw RuleViolationException.ofField("field-missing", "languages",
					Sentence.of("timetable.languages-missing"));
		}
		return chosen;
	}

	String whose() {
		return Given.text(this.club);
	}

}
