package rimebook;

import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.EventId;
import rimebook.competition.SegmentId;
import rimebook.draw.DrawTicket;
import rimebook.entries.EnterTeam;
import rimebook.entries.Entries;
import rimebook.entries.TeamView;
import rimebook.published.Standing;
import rimebook.results.ResultPublication;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** A name that was typed wrongly, found between two segments. */
@WholeApplication
class MendedNamesIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Standings standings;

	@Autowired
	private JdbcClient database;

	private final String unique = UUID.randomUUID().toString();

	private SmallCompetition day;

	private TeamView team;

	private Visitor secretary;

	@BeforeEach
	void signTheFirstSegment() {
		this.day = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 1,
				CompetitionFixtures.anEvent("Junior", 3).signedAtOnce());
		EventId event = this.day.event().id();
		this.team = this.context.getBean(Entries.class)
			.enter(new EnterTeam(event, "Beakon " + this.unique, "Skerywick", "Lantrens " + this.unique, "", ""),
					SmallCompetition.SECRETARY)
			.team();
		this.day.move(CompetitionState.ENTRIES_CLOSED);
		this.day.move(CompetitionState.RUNNING);
		this.day.open(1);
		this.day.skateRest(1);
		sign(this.day.segment(1));
		this.secretary = Crew.visitor(this.context, Role.SECRETARY);
	}

	private void sign(SegmentId segment) {
		ResultPublication publication = this.context.getBean(ResultPublication.class);
		publication.post(segment, version(segment), SmallCompetition.ACCOUNTANT);
		publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, SmallCompetition.REFEREE);
		publication.sign(segment, version(segment), Signatories.Signatory.ACCOUNTANT, SmallCompetition.ACCOUNTANT);
	}

	private int version(SegmentId segment) {
		return this.standings.result(segment).orElseThrow().version();
	}

	@Test
	void whatWasSignedKeepsTheNameAndWhatComesHasTheNewOne() {
		mend();
		assertThat(teamsOf(this.day.segment(1))).contains("Lantrens " + this.unique)
			.doesNotContain("Lanterns " + this.unique);
		this.day.open(2);
		this.day.skateRest(2);
		assertThat(teamsOf(this.day.segment(2))).contains("Lanterns " + this.unique)
			.doesNotContain("Lantrens " + this.unique);
		assertThat(teamsOf(this.day.segment(1))).contains("Lantrens " + this.unique);
	}

	@Test
	void everybodyCanStillRepeatTheDraw() {
		mend();
		String text = "seed 1|Short programme|Lantrens " + this.unique + "|Beakon " + this.unique;
		Visitor.Page order = new Visitor(port()).open("/follow/" + this.day.competition().slug() + "/"
				+ this.day.event().slug() + "/" + this.day.event().segments().get(0).slug() + "/order");
		assertThat(order.text()).contains("Lanterns " + this.unique, "drawn as " + text);
		Element row = Crew.visitor(this.context, Role.REFEREE)
			.open("/desk/draw/" + this.day.segment(1))
			.document()
			.selectFirst("tr[data-digested*=Lantrens]");
		assertThat((Object) row).isNotNull();
		assertThat(row.attr("data-digested")).isEqualTo(text);
		assertThat(row.attr("data-ticket")).isEqualTo(new DrawTicket(text).hex());
		assertThat(row.text()).contains("Lanterns " + this.unique, "Drawn as " + text);
	}

	@Test
	void bothLinesAreOnTheRecordAndAnOlderPageIsRefused() {
		Visitor.Page older = this.secretary.open("/desk/entries/team/" + this.team.id());
		mend();
		assertThat(this.database
			.sql("select before_text || ' > ' || after_text from record_line where subject_id in (?, ?) "
					+ "and before_text <> '' order by number")
			.params(this.team.id().toString(), this.team.club().id().toString())
			.query(String.class)
			.list())
			.containsExactly("Lantrens %1$s (Beakon %1$s, Skerywick) > Lanterns %1$s (Beakon %1$s, Skerywick)"
				.formatted(this.unique), "Beakon %1$s (Skerywick) > Beacon %1$s (Skerrywick)".formatted(this.unique));
		Visitor.Page refused = older.submit("main form", Map.of("name", "Lamps " + this.unique));
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.text()).contains("Somebody else changed this team since you opened it");
	}

	@Test
	void whoOnlyReadsGetsNoForm() {
		Visitor.Page page = Crew.visitor(this.context, Role.REFEREE)
			.open("/desk/entries/club/" + this.team.club().id());
		assertThat(page.text()).contains("Beakon " + this.unique);
		assertThat(page.document().select("main form")).isEmpty();
	}

	/** As the secretary does it: from the entry to the team and its club. */
	private void mend() {
		Visitor.Page entry = this.secretary.open("/desk/entries/entry/" + this.day.entries()
			.stream()
			.filter((one) -> one.team().id().equals(this.team.id()))
			.findFirst()
			.orElseThrow()
			.id());
		assertThat(entry.document().select("main a[href*=/desk/entries/club/]").eachAttr("href"))
			.containsExactly("/desk/entries/club/" + this.team.club().id());
		this.secretary.open(entry.document().select("main a[href*=/desk/entries/team/]").attr("href"))
			.submit("main form", Map.of("name", "Lanterns " + this.unique));
		Visitor.Page saved = this.secretary.open("/desk/entries/club/" + this.team.club().id())
			.submit("main form", Map.of("name", "Beacon " + this.unique, "town", "Skerrywick"));
		assertThat(saved.text()).contains("The club Beacon " + this.unique + " is saved.");
	}

	private List<String> teamsOf(SegmentId segment) {
		return this.standings.latest(segment).orElseThrow().standing().rows().stream().map(Standing.Row::team).toList();
	}

	private int port() {
		return Integer.parseInt(this.context.getEnvironment().getRequiredProperty("local.server.port"));
	}

}
