package rimebook.letters;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

import org.junit.jupiter.api.Test;

import rimebook.rosters.ContactView;
import rimebook.rosters.Retention;
import rimebook.testsupport.WholeApplication;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.Timetables;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

@WholeApplication
class LettersIntegrationTests extends LettersDay {

	@Test
	void theRecordTellsHowManyOfWhichKindAndNothingElse() {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "nell@example.org");
		mailAll(LetterKind.CONFIRMATION);
		round(Duration.ZERO);
		assertThat(lines("letters.mailed")).containsExactly("1 letter, confirmation of entry");
		assertThat(this.database.sql("select count(*) from record_line where after_text like '%nell@example.org%'")
			.query(Integer.class)
			.single()).isZero();
	}

	@Test
	void nothingElseIsSentThanWhatWasLookedAt() {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "nell@example.org");
		Letters mailing = mailing();
		Letters.Order order = order(LetterKind.CONFIRMATION);
		String seen = this.letters.preview(order, SECRETARY).seen();
		LetterTexts.Key key = new LetterTexts.Key(this.competition, LetterKind.CONFIRMATION, Locale.ENGLISH);
		this.texts.change(key, 0, new Draft.Content("[team]", "Other words."), SECRETARY);
		refused("stale-version", () -> mail(mailing, order, seen));
		String now = this.letters.preview(order, SECRETARY).seen();
		mail(mailing, order, now);
		refused("stale-version", () -> mail(mailing, order, now));
	}

	@Test
	void withoutAServerLettersArePrintedAndTheyAlone() {
		assertThat(this.letters.canMail()).isFalse();
		Letters.Order order = order(LetterKind.CONFIRMATION);
		String seen = this.letters.preview(order, SECRETARY).seen();
		refused("letters-no-server", () -> this.letters.mail(order, seen, SECRETARY));
		UUID sending = this.letters.print(order, seen, SECRETARY);
		assertThat(this.sent.sending(sending).states()).isEqualTo(Map.of(LetterState.PRINTED, 3));
		assertThat(new String(this.letters.sheets(sending), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
		assertThat(round(Duration.ZERO)).isZero();
	}

	@Test
	void aTextIsChangedVersionByVersionAndTakenBack() {
		LetterTexts.Key key = new LetterTexts.Key(this.competition, LetterKind.LINK, Locale.FRENCH);
		Draft.Content house = this.texts.of(key).content();
		refused("letter-placeholder",
				() -> this.texts.change(key, 0, new Draft.Content("[team]", "[tema]"), SECRETARY));
		refused("letter-placeholder",
				() -> this.texts.change(key, 0, new Draft.Content("[facts]", "[team]"), SECRETARY));
		refused("field-not-text", () -> this.texts.change(key, 0, new Draft.Content("a\nb", "[team]"), SECRETARY));
		this.texts.change(key, 0, new Draft.Content("One [team]", "Un"), SECRETARY);
		this.texts.change(key, 1, new Draft.Content("Two", "Deux"), SECRETARY);
		refused("stale-version", () -> this.texts.change(key, 1, new Draft.Content("Three", "Trois"), SECRETARY));
		this.texts.restore(key, 2, 1, SECRETARY);
		assertThat(this.texts.of(key).content()).isEqualTo(new Draft.Content("One [team]", "Un"));
		this.texts.restore(key, 3, 0, SECRETARY);
		assertThat(this.texts.of(key).content()).isEqualTo(house);
		assertThat(this.texts.of(key).isHouses()).isTrue();
		assertThat(this.texts.versions(key)).extracting(LetterTexts.Version::number).containsExactly(4, 3, 2, 1, 0);
		assertThat(lines("letters.text-changed")).hasSize(4).first().isEqualTo("link, French: version 1");
		assertThat(lines("letters.text-changed")).noneMatch((line) -> line.contains("Un"));
	}

	@Test
	void aFreeLetterIsWrittenFirstAndThenTheSameInEveryLanguage() {
		refused("letter-unwritten", () -> this.letters.preview(order(LetterKind.FREE), SECRETARY));
		this.languages.set(this.competition, Map.of(team(0).team().id(), Locale.FRENCH), SECRETARY);
		this.texts.change(new LetterTexts.Key(this.competition, LetterKind.FREE, Locale.ENGLISH), 0,
				new Draft.Content("To [team]", "Bring skates."), SECRETARY);
		assertThat(this.letters.preview(order(LetterKind.FREE), SECRETARY).drafts())
			.extracting((draft) -> draft.content().subject())
			.containsExactly("To Team 1", "To Team 2", "To Team 3");
	}

	@Test
	void whatIsMissingIsToldAndWhoLacksNothingGetsNoLetter() {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "nell@example.org");
		Letters.Preview preview = this.letters.preview(order(LetterKind.MISSING), SECRETARY);
		assertThat(preview.drafts()).allMatch(Draft::told);
		assertThat(preview.drafts().get(0).content().body()).contains("\n- ");
		assertThat(preview.mailed()).isEqualTo(1);
		assertThat(this.letters.preview(order(LetterKind.TIMETABLE), SECRETARY).untold()).hasSize(3);
		refused("letters-none", () -> {
			Letters.Order order = order(LetterKind.TIMETABLE);
			this.letters.print(order, this.letters.preview(order, SECRETARY).seen(), SECRETARY);
		});
	}

	@Test
	void timesAreToldAsTheyArePublishedInTheLanguageOfTheTeam() {
		this.languages.set(this.competition, Map.of(team(0).team().id(), Locale.FRENCH), SECRETARY);
		this.context.getBean(Timetables.class).fill(this.competition, 0, SECRETARY);
		assertThat(this.letters.preview(order(LetterKind.TIMETABLE), SECRETARY).printed()).isZero();
		this.context.getBean(TimetableVersions.class).publish(this.competition, 1, "", SECRETARY);
		List<Draft> drafts = this.letters.preview(order(LetterKind.TIMETABLE), SECRETARY).drafts();
		assertThat(drafts.get(0).content().body()).contains("voici les horaires").contains("Junior, Short programme");
		assertThat(drafts.get(1).content().body()).contains("these are the times").contains("Junior, Free");
	}

	@Test
	void aLinkLeadsToThePublicPageOfTheTeam() {
		assertThat(this.letters.preview(order(LetterKind.LINK), SECRETARY).drafts().get(0).content().body())
			.contains("/follow/" + this.day.competition().slug() + "/team/" + team(0).id() + "?lang=en");
	}

	@Test
	void onTheDayNamesAddressesAndTextsGoAndThatLettersWereSentStays() {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "nell@example.org");
		this.texts.change(new LetterTexts.Key(this.competition, LetterKind.CONFIRMATION, Locale.ENGLISH), 0,
				new Draft.Content("[team]", "For Nell."), SECRETARY);
		mailAll(LetterKind.CONFIRMATION);
		round(Duration.ZERO);
		UUID waits = mailAll(LetterKind.CONFIRMATION);
		Retention retention = this.context.getBean(Retention.class);
		LocalDate last = this.day.competition().facts().lastDay();
		retention.set(this.competition, last.plusDays(1), Retention.View.NONE, SECRETARY);
		this.database.sql("update roster_retention set delete_on = ? where competition_id = ?")
			.params(LocalDate.of(2020, 1, 1), this.competition.value())
			.update();
		retention.delete(this.competition);
		assertThat(this.sent.of(this.competition)).hasSize(2);
		assertThat(this.sent.letters(waits)).singleElement().satisfies((letter) -> {
			assertThat(letter.course().state()).isEqualTo(LetterState.CANCELLED);
			assertThat(letter.isEmptied()).isTrue();
			assertThat(letter.to()).isEqualTo(Addressees.Addressee.NOBODY);
			assertThat(letter.content()).isEqualTo(Draft.Content.EMPTY);
		});
		assertThat(this.texts.versions(new LetterTexts.Key(this.competition, LetterKind.CONFIRMATION, Locale.ENGLISH)))
			.hasSize(1);
		assertThat(lines("letters.deleted")).hasSize(1);
		assertThat(this.sent.empty(this.competition, SECRETARY).isSomething()).isFalse();
	}

}
