package rimebook.rosters;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.shared.Actor;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PaperStandards;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

/** Rosters as people work on them: on pages and on paper. */
@WholeApplication
class RosterPagesIntegrationTests {

	private static final Actor SECRETARY = SmallCompetition.SECRETARY;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Rosters rosters;

	@Autowired
	private Skaters skaters;

	@Autowired
	private Contacts contacts;

	private CompetitionId competition;

	private EntryView entry;

	private EntryView further;

	private String family;

	private Visitor secretary;

	@BeforeEach
	void enterTwoTeams() {
		SmallCompetition small = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 2,
				CompetitionFixtures.anEvent("Junior", 3));
		this.competition = small.competition().id();
		this.entry = small.entries().get(0);
		this.further = small.entries().get(1);
		this.family = "Firn" + UUID.randomUUID().toString().replaceAll("[^a-f]", "");
		this.secretary = Crew.visitor(this.context, Role.SECRETARY);
	}

	@Test
	void paperTellsNoBirthDateUnlessTheSecretaryAsksForIt() throws IOException {
		RosterView.Place first = add(this.entry, "Aila", PlaceRole.SKATES);
		RosterView.Place second = add(this.entry, "Bo", PlaceRole.ALTERNATE);
		add(this.further, "Cela", PlaceRole.SKATES);
		this.rosters.stepIn(second.id(), second.version(), first.id(), first.version(), "Ill.", SECRETARY);
		String plain = "/desk/rosters/paper/" + this.competition + "/rosters.pdf";
		String births = "/desk/rosters/files/" + this.competition + "/with-birth-dates.pdf";
		HttpResponse<byte[]> all = this.secretary.bytes(plain);
		assertThat(PaperStandards.faults(all.body())).isEmpty();
		assertThat(text(all))
			.contains("Aila " + this.family, "Bo " + this.family, "Cela " + this.family, "instead of place 1",
					"left the roster")
			.doesNotContain("2012", "MN-77");
		String one = text(this.secretary.bytes(births + "?entry=" + this.entry.id()));
		assertThat(one).contains("Aila " + this.family, "2012-02-29", "MN-77").doesNotContain("Cela");
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		assertThat(referee.bytes(plain).statusCode()).isEqualTo(200);
		assertThat(referee.bytes(births).statusCode()).isEqualTo(403);
		assertThat(this.secretary.bytes(births + "?entry=" + UUID.randomUUID()).statusCode()).isEqualTo(404);
	}

	@Test
	void whoIsWrittenDownTwiceBecomesOneAndTwoAgain() {
		SkaterView one = add(this.entry, "Aila", PlaceRole.SKATES).skater();
		SkaterView other = add(this.further, "Ailla", PlaceRole.SKATES).skater();
		Visitor.Page ask = this.secretary.open("/desk/rosters/skater/" + one.id() + "/same");
		Visitor.Page refused = ask.submit("form[action$=/same]", Map.of("reason", "Written down twice."));
		assertThat(refused.text()).contains("Who stays");
		Visitor.Page stays = refused.submit("form[action$=/same]", Map.of("other", other.id() + " " + other.version()));
		assertThat(stays.path()).isEqualTo("/desk/rosters/skater/" + other.id());
		assertThat(stays.text()).contains("Also written down as", "Team 1", "Team 2");
		Visitor.Page gone = this.secretary.open("/desk/rosters/skater/" + one.id());
		assertThat(gone.text()).contains("It turned out that this is Ailla " + this.family);
		assertThat(new String(this.secretary.bytes("/desk/rosters/skater/" + other.id() + "/known.json").body()))
			.contains("\"Aila\"", "\"Ailla\"");
		Visitor.Page apart = this.secretary.open("/desk/rosters/skater/" + one.id() + "/same")
			.submit("form[action$=/separation]", Map.of("reason", "They are sisters."));
		assertThat(apart.path()).isEqualTo("/desk/rosters/skater/" + one.id());
		assertThat(apart.text()).contains("Team 1").doesNotContain("Team 2");
	}

	@Test
	void whoCanBeCalledIsFoundShownAndDeleted() {
		String name = "Nell " + this.family;
		ContactView coach = this.contacts
			.add(new Contacts.AddContact(this.entry.id(), ContactView.Kind.COACH, name, "040 7654321", ""), SECRETARY);
		SkaterView skater = this.skaters
			.add(new DraftSkater("Nell", this.family, null, "", this.entry.team().club().id()), SECRETARY);
		Visitor.Page found = this.secretary.open("/desk/rosters/people")
			.submit("form[action$=/people]", Map.of("name", this.family));
		assertThat(found.document().select("main a[href]").eachAttr("href"))
			.contains("/desk/rosters/skater/" + skater.id(), "/desk/rosters/contact/" + coach.id());
		assertThat(new String(this.secretary.bytes("/desk/rosters/skater/" + skater.id() + "/known.json").body()))
			.contains("040 7654321", "COACH");
		assertThat(new String(this.secretary.bytes("/desk/rosters/contact/" + coach.id() + "/known.json").body()))
			.contains("040 7654321", "Team 1");
		Visitor.Page page = this.secretary.open("/desk/rosters/contact/" + coach.id());
		assertThat(page.text()).contains("040 7654321", "coach");
		assertThat(page.submit("form[action$=/deletion]", Map.of("reason", "")).text()).contains("is empty");
		page.submit("form[action$=/deletion]", Map.of("reason", "Asked for in a letter."));
		assertThat(this.contacts.of(this.entry.id())).isEmpty();
		assertThat(this.secretary.open("/desk/rosters/contact/" + coach.id()).status()).isEqualTo(404);
	}

	@Test
	void aFileThatCannotBeWrittenIsShownAgainWithHowFarItCame() {
		Visitor.Page preview = lookOver();
		this.context.getBean(Entries.class).withdraw(this.entry.id(), this.entry.version(), "Too few.", SECRETARY);
		String writing = preview.press("form[action$=/acceptance]").path();
		await().untilAsserted(() -> assertThat(this.secretary.open(writing).text()).contains("No row was written.",
				"compared with what is there now", "No team 'Team 1' takes part"));
	}

	private Visitor.Page lookOver() {
		return this.secretary.open("/desk/rosters/files/" + this.competition)
			.submit("form[enctype]",
					Map.of("csv", "event,team,given_name,family_name\nJunior,Team 1,Aila," + this.family + "\n"));
	}

	@Test
	void aFileIsWrittenAndOneThatNobodyKnowsOfSaysWhatToDo() {
		Visitor.Page preview = lookOver();
		Visitor.Page writing = preview.press("form[action$=/acceptance]");
		assertThat(writing.path()).contains("/writing/");
		await().untilAsserted(() -> assertThat(this.secretary.open(writing.path()).text())
			.contains("All is written: 1 person is new"));
		Visitor.Page lost = this.secretary
			.open("/desk/rosters/files/" + this.competition + "/writing/" + UUID.randomUUID());
		assertThat(lost.status()).isEqualTo(200);
		assertThat(lost.text()).contains("Send the same file again", "100 rows at a time");
	}

	private RosterView.Place add(EntryView entry, String given, PlaceRole role) {
		return this.rosters.addNew(entry.id(), new DraftSkater(given, this.family, LocalDate.of(2012, 2, 29),
				"MN-77" + given, this.entry.team().club().id()), role, false, "", SECRETARY);
	}

	private static String text(HttpResponse<byte[]> answer) throws IOException {
		assertThat(answer.statusCode()).isEqualTo(200);
		try (PDDocument document = Loader.loadPDF(answer.body())) {
			return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
		}
	}

}
