package rimebook.crawl;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.competition.CompetitionId;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.letters.Draft;
import rimebook.letters.LetterKind;
import rimebook.letters.LetterTexts;
import rimebook.letters.LetterView;
import rimebook.letters.Letters;
import rimebook.letters.SendingView;
import rimebook.letters.SentLetters;
import rimebook.letters.TeamLanguages;
import rimebook.testsupport.SmallCompetition;

/** Letters of the crawled competitions, for the pages that show them. */
final class CrawledLetters {

	private CrawledLetters() {
	}

	/**
	 * Change a text and print a letter with a personal link to each team; the first looks
	 * as if the mail server had refused it.
	 */
	static void write(ApplicationContext context, SmallCompetition small) {
		CompetitionId competition = small.competition().id();
		write(context, competition, 0, "Dear [recipient],\n\n[facts]\nbring skates.\n[personal-link]");
		Set<EntryId> teams = small.entries().stream().map(EntryView::id).collect(Collectors.toSet());
		if (teams.isEmpty()) {
			return;
		}
		context.getBean(TeamLanguages.class)
			.set(competition, Map.of(small.entries().get(0).team().id(), Locale.FRENCH), SmallCompetition.SECRETARY);
		Letters letters = context.getBean(Letters.class);
		Letters.Order order = new Letters.Order(competition, LetterKind.FREE, teams);
		if (letters.preview(order, SmallCompetition.SECRETARY).printed() == 0) {
			// Nobody who takes part, so nobody who may have a link.
			write(context, competition, 1, "Dear [recipient],\n\n[facts]\nbring skates.");
		}
		UUID sending = letters.print(order, letters.preview(order, SmallCompetition.SECRETARY).seen(),
				SmallCompetition.SECRETARY);
		context.getBean(JdbcClient.class)
			.sql("update letter set state = 'REFUSED', trouble = '550 No such mailbox', attempts = 1 where id = ?")
			.param(context.getBean(SentLetters.class).letters(sending).get(0).id())
			.update();
	}

	private static void write(ApplicationContext context, CompetitionId competition, int seen, String body) {
		context.getBean(LetterTexts.class)
			.change(new LetterTexts.Key(competition, LetterKind.FREE, Locale.ENGLISH), seen,
					new Draft.Content("To [team]", body), SmallCompetition.SECRETARY);
	}

	/** The sending and its first letter. */
	static Map<String, List<String>> ids(ApplicationContext context, CompetitionId competition) {
		SentLetters sent = context.getBean(SentLetters.class);
		List<UUID> sendings = sent.of(competition).stream().limit(1).map(SendingView::id).toList();
		return Map.of("sending", sendings.stream().map(UUID::toString).toList(), "letter",
				sendings.stream()
					.flatMap((sending) -> sent.letters(sending).stream().limit(1))
					.map(LetterView::id)
					.map(UUID::toString)
					.toList());
	}

}
