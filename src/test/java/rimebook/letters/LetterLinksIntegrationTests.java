package rimebook.letters;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Date;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import javax.sql.DataSource;

import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.boot.test.web.server.LocalServerPort;

import rimebook.accounts.LinkRefused;
import rimebook.accounts.LinkStanding;
import rimebook.accounts.Role;
import rimebook.accounts.TeamLinks;
import rimebook.archive.ArchiveWriting;
import rimebook.archive.Variant;
import rimebook.entries.Entries;
import rimebook.managers.TeamsLinks;
import rimebook.rosters.ContactView;
import rimebook.testsupport.Crew;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/**
 * The link that opens a team's page is made when the letter goes, holds once it has
 * arrived, and stands nowhere but in the letter itself.
 */
@WholeApplication
@ExtendWith(OutputCaptureExtension.class)
class LetterLinksIntegrationTests extends LettersDay {

	private static final Pattern LINK = Pattern.compile("https?://\\S+/manager#([A-Za-z0-9_-]{43})");

	private static final String NOT_KEPT = "[personal link, not kept]";

	@LocalServerPort
	private int port;

	@Autowired
	private TeamLinks links;

	@Autowired
	private TeamsLinks teams;

	@Autowired
	private PersonalLinks personal;

	@BeforeEach
	void aManager() {
		contact(0, ContactView.Kind.MANAGER, "Nell Thaw", "nell@example.org");
	}

	@Test
	void whoFollowsTheLinkIsInAndItStandsNowhereElse(CapturedOutput output, @TempDir Path folder) throws Exception {
		mailAll(LetterKind.LINK);
		assertThat(letter().content().body()).contains(NOT_KEPT);
		round(Duration.ZERO);
		String body = body(received().get(0));
		assertThat(body).contains("/team/" + team(0).id()).doesNotContain(NOT_KEPT);
		String token = token(body);
		assertThat(letter().course().state()).isEqualTo(LetterState.SENT);
		assertThat(fate()).isEqualTo(PersonalLinks.Fate.GOOD);
		Visitor manager = new Visitor(this.port);
		Visitor.Page page = manager.open("/manager").submit("#open", Map.of("token", token));
		assertThat(page.path()).isEqualTo("/manager");
		assertThat(page.text()).contains("Team 1");
		assertThat(fate()).isEqualTo(PersonalLinks.Fate.OPENED);
		assertThat(letter().content().body()).isEqualTo(body.strip().replaceFirst(LINK.pattern(), NOT_KEPT));
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		String path = "/desk/letters/" + this.competition;
		assertThat(secretary.open(path + "/letter/" + letter().id()).text())
			.contains("opens the page, and was used.", NOT_KEPT)
			.doesNotContain(token);
		assertThat(secretary.open("/desk/managers/" + this.competition).text()).contains("first opened")
			.doesNotContain(token);
		assertThat(text(this.letters.sheets(letter().sending()))).contains(NOT_KEPT).doesNotContain(token);
		assertThat(columnsWith(token)).isEmpty();
		assertThat(columnsWith("opens the page where you see")).as("the search finds what is there").isNotEmpty();
		assertThat(output.getAll()).doesNotContain(token);
		assertThat(archive(folder)).doesNotContain(token).contains(NOT_KEPT);
	}

	@Test
	void anAttemptThatFailedLeavesTheLinkBeforeAndItsOwnOpensNothing() throws Exception {
		String before = byHand();
		mailAll(LetterKind.LINK);
		String failed;
		try (ScriptedMailServer server = new ScriptedMailServer("250 fine", "451 4.3.0 Try later")) {
			postman(carrier(server.port()), Duration.ZERO).round();
			failed = token(said(server));
		}
		assertThat(letter().course().state()).isEqualTo(LetterState.WAITING);
		assertThat(standing(failed)).isEqualTo(LinkStanding.UNKNOWN);
		assertThat(standing(before)).isEqualTo(LinkStanding.GOOD);
		round(Duration.ofSeconds(70));
		String token = token(body(received().get(0)));
		assertThat(token).isNotEqualTo(failed);
		assertThat(standing(token)).isEqualTo(LinkStanding.GOOD);
		assertThat(standing(before)).isEqualTo(LinkStanding.UNKNOWN);
		assertThat(entryLines("entry.manager-link-renewed")).isEqualTo(1);
	}

	@Test
	void withoutAnAnswerTheLinkHoldsFromWhenItIsUsed() throws Exception {
		String before = byHand();
		mailAll(LetterKind.LINK);
		String token = doubtful();
		assertThat(letter().course().state()).isEqualTo(LetterState.DOUBTFUL);
		assertThat(fate()).isEqualTo(PersonalLinks.Fate.UNDER_WAY);
		assertThat(standing(before)).as("nobody used the other").isEqualTo(LinkStanding.GOOD);
		assertThat(this.links.open(token).entry()).isEqualTo(team(0).id().value());
		assertThat(standing(before)).isEqualTo(LinkStanding.UNKNOWN);
		assertThat(standing(token)).isEqualTo(LinkStanding.GOOD);
		assertThat(entryLines("entry.manager-link-renewed")).isEqualTo(1);
		assertThat(fate()).isEqualTo(PersonalLinks.Fate.OPENED);
	}

	@Test
	void aLetterThatGoesOnceMoreVoidsTheOneOfWhichNothingWasHeard() throws Exception {
		mailAll(LetterKind.LINK);
		String token = doubtful();
		LetterView lost = letter();
		assertThat(this.teams.giveRest(this.competition, SECRETARY)).as("the first team waits for its own")
			.isEqualTo(2);
		pause();
		UUID again = sentWith(carrier(1)).again(lost.id(), "nell@example.org", SECRETARY);
		int port = this.mail.getSmtp().getPort();
		this.mail.stop();
		postman(carrier(port), Duration.ZERO).round();
		this.mail = server(0);
		this.mail.start();
		assertThat(fate(again)).isEqualTo(PersonalLinks.Fate.VOID);
		assertThat(fate(lost.id())).as("it may have arrived").isEqualTo(PersonalLinks.Fate.UNDER_WAY);
		round(Duration.ofSeconds(70));
		String second = token(body(received().get(0)));
		assertThat(standing(token)).isEqualTo(LinkStanding.UNKNOWN);
		assertThat(standing(second)).isEqualTo(LinkStanding.GOOD);
		assertThat(List.of(fate(lost.id()), fate(again))).containsExactly(PersonalLinks.Fate.VOID,
				PersonalLinks.Fate.GOOD);
	}

	@Test
	void aLinkGivenByHandMeanwhileIsTheLaterWord() throws Exception {
		mailAll(LetterKind.LINK);
		pause();
		String byHand = byHand();
		round(Duration.ZERO);
		assertThat(received()).isEmpty();
		assertThat(letter().course().state()).isEqualTo(LetterState.HELD);
		assertThat(letter().course().attempts()).isZero();
		assertThat(letter().course().trouble()).contains(SECRETARY.name() + " gave this team a link");
		assertThat(this.sent.troubles()).containsEntry(this.competition, 1);
		assertThat(standing(byHand)).isEqualTo(LinkStanding.GOOD);
		Visitor.Page page = Crew.visitor(this.context, Role.SECRETARY)
			.open("/desk/letters/" + this.competition + "/letter/" + letter().id());
		assertThat(page.text()).contains("held back", "gave this team a link")
			.doesNotContain("What the mail server said");
		pause();
		sentWith(carrier(1)).again(letter().id(), "nell@example.org", SECRETARY);
		round(Duration.ZERO);
		assertThat(standing(token(body(received().get(0))))).isEqualTo(LinkStanding.GOOD);
		assertThat(standing(byHand)).isEqualTo(LinkStanding.UNKNOWN);
	}

	@Test
	void aLinkGivenByHandVoidsOneOfWhichNothingWasHeard() throws Exception {
		mailAll(LetterKind.LINK);
		String token = doubtful();
		String byHand = byHand();
		assertThat(standing(token)).isEqualTo(LinkStanding.UNKNOWN);
		assertThat(opened(token)).isEqualTo(LinkStanding.UNKNOWN);
		this.personal.arrived(letter().id());
		assertThat(standing(byHand)).as("an answer that comes late changes nothing").isEqualTo(LinkStanding.GOOD);
	}

	@Test
	void whatIsShutStaysShut() throws Exception {
		mailAll(LetterKind.LINK);
		String token = doubtful();
		this.teams.shut(this.competition, team(0).id(), SECRETARY);
		assertThat(opened(token)).isEqualTo(LinkStanding.REVOKED);
		assertThat(fate()).isEqualTo(PersonalLinks.Fate.SHUT);
		pause();
		mailAll(LetterKind.LINK);
		pause();
		assertThat(round(Duration.ZERO)).isEqualTo(1);
		String next = token(body(received().get(0)));
		mailAll(LetterKind.LINK);
		pause();
		this.teams.shut(this.competition, team(0).id(), SECRETARY);
		round(Duration.ZERO);
		assertThat(letter().course().state()).isEqualTo(LetterState.HELD);
		assertThat(letter().course().trouble()).contains("shut the link of this team");
		assertThat(opened(next)).isEqualTo(LinkStanding.REVOKED);
	}

	/** The one that was asked for later is the later word, whichever goes first. */
	@Test
	void anEarlierLetterThatIsTriedAgainDoesNotVoidTheLinkOfALaterOne() throws Exception {
		mailAll(LetterKind.LINK);
		int port = this.mail.getSmtp().getPort();
		this.mail.stop();
		postman(carrier(port), Duration.ZERO).round();
		LetterView early = letter();
		pause();
		mailAll(LetterKind.LINK);
		this.mail = server(0);
		this.mail.start();
		round(Duration.ZERO);
		String token = token(body(received().get(0)));
		round(Duration.ofSeconds(70));
		assertThat(received()).hasSize(1);
		assertThat(this.sent.letter(early.id()).course().state()).isEqualTo(LetterState.HELD);
		assertThat(standing(token)).isEqualTo(LinkStanding.GOOD);
	}

	@Test
	void aTeamThatWithdrewGetsNoLetterWithALink() {
		write("Hello [team]\n[personal-link]");
		mailAll(LetterKind.FREE);
		this.context.getBean(Entries.class).withdraw(team(0).id(), team(0).version(), "Ill.", SECRETARY);
		round(Duration.ZERO);
		assertThat(received()).isEmpty();
		assertThat(letter().course().state()).isEqualTo(LetterState.HELD);
		assertThat(letter().course().trouble()).contains("does not take part any more");
		Letters.Preview preview = this.letters.preview(order(LetterKind.FREE), SECRETARY);
		assertThat(preview.shutOut()).singleElement()
			.satisfies((draft) -> assertThat(draft.entry().id()).isEqualTo(team(0).id()));
		assertThat(preview.untold()).isEmpty();
		assertThat(preview.printed()).isEqualTo(2);
	}

	@Test
	void afterTheCompetitionNoLetterPromisesALink() {
		mailAll(LetterKind.LINK);
		this.database.sql("update competition set first_day = ?, last_day = ? where id = ?")
			.params(Date.valueOf("2020-01-03"), Date.valueOf("2020-01-04"), this.competition.value())
			.update();
		round(Duration.ZERO);
		assertThat(received()).isEmpty();
		assertThat(letter().course().state()).isEqualTo(LetterState.HELD);
		assertThat(letter().course().trouble()).contains("The competition is over");
		refused("competition-over", () -> this.letters.preview(order(LetterKind.LINK), SECRETARY));
		assertThat(this.letters.preview(order(LetterKind.CONFIRMATION), SECRETARY).printed()).isEqualTo(3);
		Visitor.Page page = Crew.visitor(this.context, Role.SECRETARY)
			.open("/desk/letters/" + this.competition + "/to/LINK")
			.submit("main form", Map.of());
		assertThat(page.status()).isEqualTo(422);
		assertThat(page.text()).contains("The competition is over");
	}

	@Test
	void onPaperTheLinkIsThereAsLongAsItIsShown() throws Exception {
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		String first = byHand();
		Visitor.Page preview = secretary.open("/desk/letters/" + this.competition + "/to/LINK")
			.submit("main form", Map.of());
		assertThat(preview.text()).contains("Personal links", "These teams have a link already", NOT_KEPT);
		Visitor.Page sending = preview.submit("main form", Map.of("way", "PAPER"));
		assertThat(sending.text()).contains("Letters with a personal link: 3. It can be printed still on 3");
		String sheets = sheets(secretary, sending);
		assertThat(sheets.replace(" ", "").split("/manager#", -1)).as("three links").hasSize(4);
		assertThat(standing(first)).as("what is shown still is printed again").isEqualTo(LinkStanding.GOOD);
		this.database.sql("update team_link set issued_at = ? where competition_id = ?")
			.params(LetterStore.utc(Instant.now().minusSeconds(90_000)), this.competition.value())
			.update();
		Visitor.Page later = secretary.open(sending.path());
		assertThat(later.text()).contains("It can be printed still on 0");
		assertThat(sheets(secretary, later)).contains(NOT_KEPT).doesNotContain("/manager#");
		Visitor.Page again = later.submit("form[action$=/links]", Map.of());
		assertThat(again.text()).contains("New links that were made: 3.", "It can be printed still on 3");
		assertThat(sheets(secretary, again)).doesNotContain(NOT_KEPT).contains("/manager#");
		assertThat(standing(first)).isEqualTo(LinkStanding.UNKNOWN);
		assertThat(this.sent.letters(this.sent.of(this.competition).get(0).id()))
			.allSatisfy((letter) -> assertThat(letter.content().body()).contains(NOT_KEPT));
	}

	@Test
	void whatIsKeptSaysInTheLanguageOfTheTeamThatTheLinkIsNotKept() throws Exception {
		contact(1, ContactView.Kind.MANAGER, "Aino [lumi]", "aino@example.org");
		contact(2, ContactView.Kind.MANAGER, "Orrin Sleet", "orrin@example.org");
		this.languages.set(this.competition,
				Map.of(team(1).team().id(), Locale.forLanguageTag("fi"), team(2).team().id(), Locale.FRENCH),
				SECRETARY);
		UUID sending = mailAll(LetterKind.LINK);
		round(Duration.ZERO);
		assertThat(this.sent.letters(sending)).extracting((letter) -> letter.content().body())
			.anyMatch((body) -> body.contains("[henkilökohtainen linkki, ei säilytetä]") && body.contains("[lumi]"))
			.anyMatch((body) -> body.contains("[lien personnel, non conservé]"))
			.anyMatch((body) -> body.contains(NOT_KEPT));
		assertThat(received()).hasSize(3);
		for (MimeMessage message : received()) {
			assertThat(token(body(message))).hasSize(43);
		}
	}

	@Test
	void theTextHasOnePlaceForItAndNoneInTheSubject() {
		LetterTexts.Key key = new LetterTexts.Key(this.competition, LetterKind.FREE, Locale.ENGLISH);
		refused("letter-placeholder",
				() -> this.texts.change(key, 0, new Draft.Content("[personal-link]", "Hello"), SECRETARY));
		refused("letter-placeholder", () -> this.texts.change(key, 0,
				new Draft.Content("Hello", "[personal-link] or [personal-link]"), SECRETARY));
	}

	@Test
	void whatAServerSaysAgainIsKeptWithoutTheLink() {
		LetterQueue.Claimed letter = new LetterQueue.Claimed(UUID.randomUUID(), 1, Addressees.Addressee.NOBODY,
				Locale.ENGLISH, Draft.Content.EMPTY, 0);
		LinkedLetters.Ready ready = new LinkedLetters.Ready(letter, "http://rink.example/manager#abc_DEF");
		assertThat(ready.told("554 spam: http://rink.example/manager#abc_DEF, and abc_DEF"))
			.isEqualTo("554 spam: " + NOT_KEPT + ", and " + NOT_KEPT);
		assertThat(ready.toString()).doesNotContain("abc_DEF");
	}

	@Test
	void aLinkThatWasGivenSinceTheLettersWereLookedAtIsSeenFirst() {
		Letters.Order order = order(LetterKind.LINK);
		String seen = this.letters.preview(order, SECRETARY).seen();
		byHand();
		refused("stale-version", () -> mail(mailing(), order, seen));
		assertThat(this.letters.preview(order, SECRETARY).renewed()).hasSize(1);
	}

	private String byHand() {
		return this.teams.give(this.competition, team(0).id(), SECRETARY);
	}

	/** What is asked for later has a later time. */
	private static void pause() {
		Instant begun = Instant.now();
		while (Duration.between(begun, Instant.now()).toMillis() < 3) {
			Thread.onSpinWait();
		}
	}

	private void write(String body) {
		this.texts.change(new LetterTexts.Key(this.competition, LetterKind.FREE, Locale.ENGLISH), 0,
				new Draft.Content("Hello", body), SECRETARY);
	}

	/** Send what waits without ever being answered; returns the token that was sent. */
	private String doubtful() throws Exception {
		try (ScriptedMailServer server = new ScriptedMailServer("250 fine", ScriptedMailServer.HANGS_UP)) {
			postman(carrier(server.port()), Duration.ZERO).round();
			return token(said(server));
		}
	}

	private static String said(ScriptedMailServer server) throws Exception {
		InputStream letter = new ByteArrayInputStream(server.last().getBytes(StandardCharsets.US_ASCII));
		return new MimeMessage((Session) null, letter).getContent().toString();
	}

	private static String token(String body) {
		Matcher link = LINK.matcher(body);
		assertThat(link.find()).as(body).isTrue();
		return link.group(1);
	}

	private PersonalLinks.Fate fate() {
		return fate(letter().id());
	}

	private PersonalLinks.Fate fate(UUID letter) {
		return this.personal.fate(this.competition, team(0).id(), letter);
	}

	private LinkStanding standing(String token) {
		try {
			this.links.pass(token);
			return LinkStanding.GOOD;
		}
		catch (LinkRefused ex) {
			return ex.standing();
		}
	}

	private LinkStanding opened(String token) {
		try {
			this.links.open(token);
			return LinkStanding.GOOD;
		}
		catch (LinkRefused ex) {
			return ex.standing();
		}
	}

	private long entryLines(String action) {
		return this.database.sql("select count(*) from record_line where action = ? and subject_id = ?")
			.params(action, team(0).id().toString())
			.query(Long.class)
			.single();
	}

	/** Every column of text that holds those words, of every table. */
	private List<String> columnsWith(String words) {
		return this.database.sql("""
				select table_name, column_name from information_schema.columns where lower(table_schema) = 'public'
				and (lower(data_type) like 'character%' or lower(data_type) = 'text')""")
			.query((row, at) -> List.of(row.getString(1), row.getString(2)))
			.list()
			.stream()
			.filter((column) -> this.database
				.sql("select count(*) from \"%s\" where \"%s\" like ?".formatted(column.get(0), column.get(1)))
				.param("%" + words + "%")
				.query(Long.class)
				.single() > 0)
			.map((column) -> String.join(".", column))
			.toList();
	}

	/** All that is in the whole archive of the competition. */
	private String archive(Path folder) throws Exception {
		Path file = folder.resolve("whole.zip");
		try (Connection connection = this.context.getBean(DataSource.class).getConnection()) {
			ArchiveWriting.write(connection,
					new ArchiveWriting.Order(this.competition.toString(), Variant.WHOLE, Instant.now(), List.of()),
					file, ArchiveWriting.Progress.UNSEEN);
		}
		StringBuilder all = new StringBuilder();
		try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
			for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
				all.append(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
			}
		}
		return all.toString();
	}

	private String sheets(Visitor secretary, Visitor.Page sending) throws IOException {
		return text(secretary.bytes(sending.document().selectFirst("a[href$='sheets.pdf']").attr("href")).body());
	}

	private static String text(byte[] pdf) throws IOException {
		try (PDDocument document = Loader.loadPDF(pdf)) {
			return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
		}
	}

}
