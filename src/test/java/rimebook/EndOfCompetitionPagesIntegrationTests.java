package rimebook;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.DraftEvent;
import rimebook.competition.JudgingMethod;
import rimebook.panels.SeatKind;
import rimebook.results.ResultPublication;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.ACCOUNTANT;
import static rimebook.testsupport.SmallCompetition.REFEREE;

/**
 * What the pages ask and say when something is cancelled, signed, ended or taken back.
 */
@WholeApplication
class EndOfCompetitionPagesIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private ResultPublication publication;

	@Autowired
	private Standings standings;

	@Test
	void aCancelledEventIsShownEverywhereAndComesBack() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		String event = "/desk/competitions/" + day.competition().id() + "/events/" + day.event().id();
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		Visitor administrator = Crew.visitor(this.context, Role.ADMINISTRATOR);
		assertThat(secretary.open(event + "/plan/CANCEL").submit("main form", Map.of("reason", " ")).status())
			.isEqualTo(422);
		Visitor.Page done = secretary.open(event + "/plan/CANCEL")
			.submit("main form", Map.of("reason", "The ice melted."));
		assertThat(done.text()).contains("Junior is cancelled; the public pages say so.", "The ice melted.");
		for (String path : everyPage(day)) {
			Visitor.Page page = administrator.open(path);
			assertThat(page.status()).as(path).isEqualTo(200);
			assertThat(page.text()).as(path).containsIgnoringCase("cancelled");
		}
		assertThat(secretary.open(event + "/plan/RETURN").press("main form").text())
			.contains("Junior takes place again.");
		assertThat(secretary.open(everyPage(day).get(0)).text()).doesNotContainIgnoringCase("cancelled");
	}

	private static List<String> everyPage(SmallCompetition day) {
		String segment = day.segment(1).toString();
		String follow = "/follow/" + day.competition().slug();
		String junior = follow + "/" + day.event().slug();
		String free = junior + "/" + day.event().segments().get(0).slug();
		return List.of(follow, junior, free, free + "/order", free + "/versions",
				"/desk/competitions/" + day.competition().id(),
				"/desk/competitions/" + day.competition().id() + "/events/" + day.event().id(), "/desk/results",
				"/desk/results/" + segment, "/desk/protests", "/desk/protests/" + segment, "/desk/draw",
				"/desk/draw/" + segment, "/desk/stand", "/desk/stand/" + segment, "/desk/panel/" + day.event().id(),
				"/desk/entries/" + day.event().id());
	}

	@Test
	void aSignatureAsksForThePasswordOfTheOneWhoSigns() {
		SmallCompetition day = posted();
		String name = Crew.add(this.context, Role.REFEREE);
		day.seatInstead(SeatKind.REFEREE, Crew.displayName(name));
		Visitor referee = Crew.signIn(this.context, name);
		String desk = "/desk/results/" + day.segment(1);
		assertThat(referee.open(desk).document().select("form[action$=/signature]")).isEmpty();
		Visitor.Page asked = referee.open(desk + "/signature?signatory=REFEREE");
		assertThat(asked.text()).contains("You sign the places below.", "Team 1");
		Visitor.Page wrong = asked.submit("main form", Map.of("password", "not mine"));
		assertThat(wrong.status()).isEqualTo(422);
		assertThat(wrong.text()).contains("That is not your password.");
		assertThat(this.context.getBean(JdbcClient.class)
			.sql("select after_text from record_line where subject = 'person' and actor = ?")
			.param(Crew.displayName(name))
			.query(String.class)
			.list()).contains("wrong password for a signature, the first time today");
		assertThat(this.standings.result(day.segment(1)).orElseThrow().signatures().referee().at()).isNull();
		assertThat(wrong.submit("main form", Map.of("password", Crew.PASSWORD)).text())
			.contains("You have signed this result.");
		for (int i = 0; i < 11; i++) {
			wrong = wrong.submit("main form", Map.of("password", "not mine either " + i));
			if (wrong.status() != 422) {
				break;
			}
		}
		assertThat(wrong.status()).isEqualTo(429);
	}

	@Test
	void aRefereeWithoutTheSeatIsToldWhoSigns() {
		SmallCompetition day = posted();
		Visitor other = Crew.visitor(this.context, Role.REFEREE);
		String desk = "/desk/results/" + day.segment(1);
		assertThat(other.open(desk).text()).contains("Runa Hale signs as referee and Bo Tally as accountant");
		assertThat(other.open(desk).document().select("a[href*=signatory]")).isEmpty();
		Visitor.Page refused = other.open(desk + "/signature?signatory=REFEREE")
			.submit("main form", Map.of("password", Crew.PASSWORD));
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.text())
			.contains("Runa Hale signs as referee in Junior, having that seat; you are The referee-");
		assertThat(this.standings.result(day.segment(1)).orElseThrow().signatures().referee().at()).isNull();
		String name = Crew.add(this.context, Role.REFEREE);
		day.seatInstead(SeatKind.REFEREE, Crew.displayName(name));
		assertThat(Crew.signIn(this.context, name).open(desk).document().select("a[href*=signatory=REFEREE]"))
			.hasSize(1);
	}

	@Test
	void everybodyReadsWhenItWasPostedAndUntilWhenProtestsAreHeard() {
		SmallCompetition day = posted();
		Visitor spectator = Crew.visitor(this.context, Role.REFEREE);
		String segment = "/follow/" + day.competition().slug() + "/" + day.event().slug() + "/"
				+ day.event().segments().get(0).slug();
		int version = this.standings.latest(day.segment(1)).orElseThrow().number();
		for (String path : List.of(segment, segment + "/versions/" + version, "/desk/results/" + day.segment(1))) {
			assertThat(spectator.open(path).text()).as(path)
				.containsPattern("Posted .*EET")
				.containsPattern("Protests.* heard until .*EET");
		}
		assertThat(spectator.open(segment + "/versions/" + (version - 1)).text()).doesNotContain("Protests are heard");
	}

	@Test
	void onlyAnAdministratorTakesACompetitionBack() {
		SmallCompetition day = posted();
		this.publication.sign(day.segment(1), version(day), Signatories.Signatory.REFEREE, REFEREE);
		this.publication.sign(day.segment(1), version(day), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
		String page = "/desk/competitions/" + day.competition().id();
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		Visitor.Page asked = secretary.open(page + "/state?next=FINAL");
		assertThat(asked.text()).contains("Only an administrator can take it back");
		assertThat(asked.press("main form").text()).contains("The competition is final.");
		assertThat(secretary.open(page).document().select("a[href$=/taking-back]")).isEmpty();
		assertThat(secretary.open(page + "/taking-back").status()).isEqualTo(403);
		Visitor administrator = Crew.visitor(this.context, Role.ADMINISTRATOR);
		Visitor.Page empty = administrator.open(page + "/taking-back").submit("main form", Map.of("reason", ""));
		assertThat(empty.status()).isEqualTo(422);
		assertThat(empty.submit("main form", Map.of("reason", "A protest was upheld.")).text())
			.contains("The competition is running.");
		assertThat(day.competition().state()).isEqualTo(CompetitionState.RUNNING);
	}

	private SmallCompetition posted() {
		SmallCompetition day = SmallCompetition.running(this.context, 2,
				new DraftEvent("Junior", DraftEvent.Judging.by(JudgingMethod.MAJORITY, 3),
						List.of(CompetitionFixtures.aShort()))
					.signedAtOnce());
		day.open(1);
		day.skateRest(1);
		this.publication.post(day.segment(1), version(day), ACCOUNTANT);
		return day;
	}

	private int version(SmallCompetition day) {
		return this.standings.result(day.segment(1)).orElseThrow().version();
	}

}
