package rimebook.panels.web;

import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.entries.Entries;
import rimebook.entries.EnterTeam;
import rimebook.panels.DraftOfficial;
import rimebook.panels.Panels;
import rimebook.panels.SeatPlace;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

@WholeApplication
class PanelPageIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Panels panels;

	private SmallCompetition day;

	private Visitor referee;

	@BeforeEach
	void seatThePanelOfOneEvent() {
		this.day = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 2,
				CompetitionFixtures.anEvent("Junior", 3));
		this.referee = Crew.visitor(this.context, Role.REFEREE);
	}

	@Test
	void thePanelOfAnotherEventIsFilledInAndWrittenOnlyWhenSeated() {
		EventId senior = this.context.getBean(Competitions.class)
			.addEvent(this.day.competition().id(), CompetitionFixtures.anEvent("Senior", 5), SmallCompetition.SECRETARY)
			.id();
		Visitor.Page filled = this.referee.open("/desk/panel/" + senior + "?from=" + this.day.event().id());
		assertThat(filled.text()).contains("5 officials of the panel of Junior are filled in.");
		assertThat(this.panels.ofEvent(senior).seats()).isEmpty();
		assertThat(filled.submit("#seating", chosenIn(filled)).text()).contains("5 officials have their seats.");
		assertThat(this.panels.missing(senior)).extracting(SeatPlace::label).containsExactly("Judge 4", "Judge 5");
	}

	@Test
	void oneRefusedRowKeepsEveryChoiceAndGivesNoSeat() {
		String bound = official("Club 1");
		Visitor.Page refused = this.referee.open("/desk/panel/" + this.day.event().id())
			.submit("#seating",
					Map.of("official[assistant_referee-1]", bound, "official[announcer-1]", official("Club 2")));
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.document().select("td.grow:has(select[aria-invalid])").text())
			.contains("is bound to this event: own club, Team 1");
		assertThat(chosenIn(refused)).containsEntry("official[assistant_referee-1]", bound).hasSize(2);
		assertThat(this.panels.ofEvent(this.day.event().id()).seats()).hasSize(5);
		Map<String, String> again = chosenIn(refused);
		again.put("reason[assistant_referee-1]", "Nobody else came.");
		assertThat(refused.submit("#seating", again).text()).contains("2 officials have their seats.");
		assertThat(this.panels.ofEvent(this.day.event().id()).seats())
			.extracting((seat) -> seat.occupant().overrideReason())
			.contains("Nobody else came.");
	}

	@Test
	void officialsWithoutAHeaderStayInTheFormAndBadOnesInTheTextToMend() {
		String headless = "Mara Lind,Beacon Skating Club,national";
		Visitor.Page refused = this.referee.open("/desk/officials/import").submit("main form", Map.of("csv", headless));
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.document().select("#csv").val()).isEqualTo(headless);
		String nameless = "name,club,qualification\n,Beacon Skating Club,national";
		Visitor.Page preview = refused.submit("main form", Map.of("csv", nameless));
		assertThat(preview.text()).contains("1 row to mend or to set aside", "line 2");
		assertThat(preview.document().select("details[open] #csv").val()).isEqualTo(nameless);
	}

	@Test
	void pageAndStandSayWhoIsBoundSinceAndTheReasonSettlesIt() {
		EventId event = this.day.event().id();
		String panel = "/desk/panel/" + event;
		String stand = "/desk/stand/" + this.day.segment(1);
		String club = "Beacon " + UUID.randomUUID();
		Visitor.Page open = this.referee.open(panel);
		assertThat(open.submit("#seating", Map.of("official[assistant_referee-1]", official(club))).text())
			.doesNotContain("Bound to a team of this event");
		this.context.getBean(Entries.class)
			.enter(new EnterTeam(event, club, "Skerrywick", "Auroras", "", ""), SmallCompetition.SECRETARY);
		assertThat(this.referee.open(stand).document().select("#bound").text()).contains("Assistant referee",
				"own club, Auroras");
		Visitor.Page bound = this.referee.open(panel);
		assertThat(bound.text()).contains("Bound to a team of this event", "bound to this event: own club, Auroras");
		assertThat(bound.submit("form[action$=/bond]", Map.of("reason", "Only at the boards.")).text())
			.contains("Assistant referee: the bond is set aside.", "Only at the boards.")
			.doesNotContain("Bound to a team of this event");
		assertThat(this.referee.open(stand).document().select("#bound").text()).isEmpty();
	}

	@Test
	void aClubIsChosenAndANearMissAskedAbout() {
		String club = "Harbour " + UUID.randomUUID().toString().replace('-', 'x') + " Blades";
		official(club);
		Visitor.Page blank = this.referee.open("/desk/officials/new");
		assertThat(blank.document().select("#club option").eachAttr("value")).contains(club, "");
		String name = "Official " + UUID.randomUUID();
		Visitor.Page asked = blank.submit("main form",
				Map.of("name", name, "otherClub", club.replace("Harbour", "Harbor")));
		assertThat(asked.status()).isEqualTo(422);
		assertThat(asked.text()).contains("is nearly '" + club + "'", "It is another club");
		assertThat(asked.submit("main form", Map.of("another", "true")).text()).contains(name, "Harbor ");
	}

	private String official(String club) {
		return this.panels
			.register(new DraftOfficial("Official " + UUID.randomUUID(), club, ""), SmallCompetition.REFEREE)
			.id()
			.toString();
	}

	private static Map<String, String> chosenIn(Visitor.Page page) {
		return page.document()
			.select("select[name^=official]:has(option[selected]:not([value='']))")
			.stream()
			.collect(Collectors.toMap((list) -> list.attr("name"), (list) -> list.select("option[selected]").val()));
	}

}
