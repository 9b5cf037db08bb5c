package rimebook.demo;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionId;
import rimebook.entries.EntryId;
import rimebook.entries.TeamView;
import rimebook.letters.Draft;
import rimebook.letters.LetterKind;
import rimebook.letters.LetterTexts;
import rimebook.letters.Letters;
import rimebook.letters.TeamLanguages;

/**
 * Letters of the invented competition: confirmations to everybody, some in Finnish and
 * French, and what is missing. All on paper, since a demonstration has no mail server.
 */
@Component
@Profile("demo")
class DemoLetters {

	private final Letters letters;

	private final LetterTexts texts;

	private final TeamLanguages languages;

	DemoLetters(Letters letters, LetterTexts texts, TeamLanguages languages) {
		this.letters = letters;
		this.texts = texts;
		this.languages = languages;
	}

	/** Write them. */
	void write(CompetitionId competition) {
		List<TeamView.Id> teams = this.letters.recipients(competition, LetterKind.CONFIRMATION)
			.stream()
			.map((one) -> one.entry().team().id())
			.distinct()
			.toList();
		if (teams.size() > 2) {
			this.languages.set(competition, Map.of(teams.get(0), Locale.forLanguageTag("fi"), teams.get(1),
					Locale.forLanguageTag("fi"), teams.get(2), Locale.FRENCH), DemoCrew.SECRETARY);
		}
		LetterTexts.Key key = new LetterTexts.Key(competition, LetterKind.CONFIRMATION, Locale.ENGLISH);
		LetterTexts.Version house = this.texts.of(key);
		this.texts.change(key, house.number(),
				new Draft.Content(house.content().subject(),
						house.content().body() + "\n\nThe doors at [place] open an hour before the first event."),
				DemoCrew.SECRETARY);
		print(competition, LetterKind.CONFIRMATION);
		print(competition, LetterKind.MISSING);
	}

	private void print(CompetitionId competition, LetterKind kind) {
		Letters.Order order = new Letters.Order(competition, kind,
				this.letters.recipients(competition, kind)
					.stream()
					.map((one) -> one.entry().id())
					.collect(Collectors.<EntryId>toSet()));
		Letters.Preview preview = this.letters.preview(order, DemoCrew.SECRETARY);
		if (preview.printed() > 0) {
			this.letters.print(order, preview.seen(), DemoCrew.SECRETARY);
		}
	}

}
