package rimebook.letters.web;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.entries.EntryId;
import rimebook.letters.LetterKind;
import rimebook.letters.Letters;
import rimebook.pages.Given;
import rimebook.wording.Sentence;

/**
 * To whom letters are written.
 *
 * @param teams the entries that were ticked
 * @param seen what the preview said of what was looked at; empty before there is one
 * @param way by mail or on paper
 */
record RecipientsForm(@Nullable List<String> teams, @Nullable String seen, @Nullable String way) {

	static RecipientsForm of(List<Letters.Recipient> all) {
		return new RecipientsForm(all.stream()
			.filter((one) -> one.entry().isEntered())
			.map((one) -> one.entry().id().toString())
			.toList(), "", "");
	}

	/** Tell whether a team was ticked. */
	public boolean has(Object entry) {
		return this.teams != null && this.teams.contains(entry.toString());
	}

	Letters.Order order(CompetitionId competition, LetterKind kind) {
		Set<EntryId> chosen = new LinkedHashSet<>();
		if (this.teams != null) {
			this.teams
				.forEach((team) -> chosen.add(Given.read("teams", team, EntryId::of, Sentence.of("letters.nobody"))));
		}
		return new Letters.Order(competition, kind, chosen);
	}

	String looked() {
		return Given.text(this.seen);
	}

	boolean isPaper() {
		return "PAPER".equals(this.way);
	}

}
