package rimebook.letters.web;

import java.net.http.HttpResponse;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.entries.EntryView;
import rimebook.letters.SentLetters;
import rimebook.rosters.ContactView;
import rimebook.rosters.Contacts;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

@WholeApplication
class LetterPagesIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JdbcClient database;

	private SmallCompetition day;

	private String path;

	private Visitor secretary;

	@BeforeEach
	void aDay() {
		this.database.sql("delete from letter_language").update();
		this.day = SmallCompetition.running(this.context, 3, 3);
		this.path = "/desk/letters/" + this.day.competition().id();
		this.secretary = Crew.visitor(this.context, Role.SECRETARY);
		EntryView team = this.day.entries().get(0);
		this.context.getBean(Contacts.class)
			.add(new Contacts.AddContact(team.id(), ContactView.Kind.MANAGER, "Nell <b>Thaw</b>", "",
					"nell@example.org"), SECRETARY);
	}

	@Test
	void lettersAreLookedAtPrintedAndKept() {
		Visitor.Page overview = this.secretary.open(this.path);
		assertThat(overview.text()).contains("No mail server is set", "Nothing was sent or printed yet");
		Visitor.Page recipients = this.secretary.open(this.path + "/to/CONFIRMATION");
		assertThat(recipients.text()).contains("Team 1", "nell@example.org", "no address: on paper only");
		Visitor.Page preview = recipients.submit("main form", Map.of());
		assertThat(preview.text()).contains("Nothing was sent yet", "Dear Nell <b>Thaw</b>,", "Team 1 is entered for");
		assertThat(preview.document().select("button[value=MAIL]")).isEmpty();
		Visitor.Page sending = preview.submit("main form", Map.of("way", "PAPER"));
		assertThat(sending.path()).contains("/sendings/");
		assertThat(sending.text()).contains("printed");
		HttpResponse<byte[]> sheets = this.secretary
			.bytes(sending.document().selectFirst("a[href$='sheets.pdf']").attr("href"));
		assertThat(sheets.statusCode()).isEqualTo(200);
		assertThat(sheets.headers().firstValue("Content-Type")).contains("application/pdf");
		Visitor.Page letter = this.secretary.open(sending.document().selectFirst("tbody th a").attr("href"));
		assertThat(letter.text()).contains("It was laid out to be printed", "Dear");
		assertThat(this.secretary.open(this.path).text()).contains("on paper");
	}

	@Test
	void aFormThatIsRefusedKeepsWhatWasTyped() {
		Visitor.Page refused = this.secretary.open(this.path + "/text/CONFIRMATION?language=fi")
			.submit("main form", Map.of("subject", "Hei [joukkue]", "body", "Kaikki hyvin."));
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.text()).contains("[joukkue]", "nobody can fill in");
		assertThat(refused.document().selectFirst("input[name=subject]").attr("value")).isEqualTo("Hei [joukkue]");
		Visitor.Page kept = refused.submit("main form", Map.of("subject", "Hei [team]"));
		assertThat(kept.text()).contains("The text is kept.", "Version 1 by", "Finnish");
		Visitor.Page back = kept.submit("form[action*='/again']", Map.of());
		assertThat(back.text()).contains("The earlier text is in force again.");
		assertThat(back.document().selectFirst("input[name=subject]").attr("value")).contains("on ilmoitettu");
	}

	@Test
	void languagesAreKeptAndSeenInTheLetters() {
		Visitor.Page languages = this.secretary.open(this.path + "/languages");
		String team = "team-" + this.day.entries().get(1).team().id();
		assertThat(languages.submit("main form", Map.of(team, "fr")).text()).contains("than before: 1.");
		assertThat(this.secretary.open(this.path + "/to/CONFIRMATION").submit("main form", Map.of()).text())
			.contains("Bonjour Club 2");
	}

	@Test
	void whatWasNotLookedAtIsNotSent() {
		Visitor.Page preview = this.secretary.open(this.path + "/to/CONFIRMATION").submit("main form", Map.of());
		assertThat(preview.submit("main form", Map.of("way", "PAPER", "seen", "0")).text()).contains("these letters",
				"Dear");
		assertThat(preview.submit("main form", Map.of("way", "MAIL")).text()).contains("No mail server is set.");
		assertThat(this.context.getBean(SentLetters.class).of(this.day.competition().id())).isEmpty();
	}

	@Test
	void aLetterOfAnotherCompetitionIsNotFound() {
		Visitor.Page sending = this.secretary.open(this.path + "/to/CONFIRMATION")
			.submit("main form", Map.of())
			.submit("main form", Map.of("way", "PAPER"));
		SmallCompetition other = SmallCompetition.running(this.context, 1, 3);
		String there = sending.path()
			.replace(this.day.competition().id().toString(), other.competition().id().toString());
		assertThat(this.secretary.open(there).status()).isEqualTo(404);
		assertThat(this.secretary.bytes(there + "/sheets.pdf").statusCode()).isEqualTo(404);
	}

	@Test
	void namesAndTextsAreDeletedOnRequest() {
		this.secretary.open(this.path + "/to/CONFIRMATION")
			.submit("main form", Map.of())
			.submit("main form", Map.of("way", "PAPER"));
		Visitor.Page deleted = this.secretary.open(this.path + "/deletion").submit("main form", Map.of());
		assertThat(deleted.text()).contains("names and words of letters (3)", "3 letters on paper");
		assertThat(this.secretary.open(this.path + "/deletion").text()).contains("nothing to delete");
	}

}
