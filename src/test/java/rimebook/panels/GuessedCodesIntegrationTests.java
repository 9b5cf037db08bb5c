package rimebook.panels;

import java.net.http.HttpResponse;
import java.util.Map;

import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.CodeGuessing;
import rimebook.accounts.Role;
import rimebook.competition.SegmentId;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

@WholeApplication
class GuessedCodesIntegrationTests {

	private static final String HERE = "127.0.0.1";

	@Autowired
	private ApplicationContext context;

	@Autowired
	private CodeGuessing guessing;

	@Autowired
	private Panels panels;

	@Autowired
	private JdbcClient database;

	@LocalServerPort
	private int port;

	private SmallCompetition day;

	private SegmentId segment;

	private String slip;

	private Visitor referee;

	@BeforeEach
	void openASegment() {
		this.day = SmallCompetition.running(this.context, 2, 3);
		this.panels.issueCodes(this.day.event().id(), SmallCompetition.REFEREE);
		this.slip = this.panels.judges(this.day.event().id()).get(0).code();
		this.segment = this.day.open(1);
		this.referee = Crew.visitor(this.context, Role.REFEREE);
	}

	@AfterEach
	void letEverybodyTryAgain() {
		this.guessing.recent().forEach((stop) -> this.guessing.free(stop.id(), SmallCompetition.REFEREE));
	}

	@Test
	void whoGuessesIsStoppedAndTheRefereeSeesItAndLetsTheDeviceTryAgain() {
		int tries = 1;
		while (pair("AAAAAAAA").statusCode() == 422 && tries < 60) {
			tries++;
		}
		assertThat(tries).isBetween(10, 30);
		HttpResponse<String> stopped = pair(code());
		assertThat(stopped.statusCode()).isEqualTo(429);
		assertThat(stopped.headers().firstValueAsLong("retry-after").orElseThrow()).isBetween(30L, 61L);
		Visitor.Page stand = this.referee.open("/desk/stand/" + this.segment);
		assertThat(stand.document().select("#guesses").text()).contains("From 127.0.0.1", "stopped until");
		Visitor.Page freed = stand.press("form[action$=/free]");
		assertThat(freed.text()).contains("That device may try a code again.", "may try again, by The referee");
		assertThat(pair(code()).statusCode()).isEqualTo(200);
		assertThat(this.database.sql("select action from record_line order by number").query(String.class).list())
			.contains("seat.guessing-stopped", "seat.guessing-freed");
	}

	@Test
	void whoIsStoppedAtAnotherNodeIsStoppedHere() {
		assertThat(pair(code()).statusCode()).isEqualTo(200);
		this.guessing.stop(HERE, HERE + ", Firefox");
		assertThat(pair(code()).statusCode()).isEqualTo(429);
		Visitor.Page panel = this.referee.open("/desk/panel/" + this.day.event().id());
		assertThat(panel.text()).contains("From 127.0.0.1, Firefox, at", "stopped until");
		assertThat(panel.press("form[action$=/free]").text()).contains("That device may try a code again.");
		assertThat(pair(code()).statusCode()).as("the seat's own tablet is alive").isEqualTo(202);
		panel = this.referee.open("/desk/panel/" + this.day.event().id());
		assertThat(panel.text()).contains("A second tablet asks for a seat", "It waits for the referee’s word");
		Visitor.Page stand = this.referee.open("/desk/stand/" + this.segment);
		assertThat(stand.document().select("#guesses").text()).contains("A second tablet asks for a seat");
		assertThat(stand.submit("form[action$=/seat-question]", Map.of("yes", "false")).text())
			.contains("The seat stays with the tablet that has it");
		assertThat(panel.submit("form[action$=/takeover]", Map.of("yes", "true")).document().select("[role=alert]"))
			.extracting(Element::text)
			.containsExactly(
					"That tablet no longer asks for the seat, or was answered meanwhile; nothing was changed.");
		assertThat(pair(code()).statusCode()).isEqualTo(202);
		panel = this.referee.open("/desk/panel/" + this.day.event().id());
		assertThat(panel.submit("form[action$=/takeover]", Map.of("yes", "true")).text())
			.contains("The other tablet has the seat now");
		assertThat(this.database.sql("select action from record_line order by number").query(String.class).list())
			.contains("seat.asked-for", "seat.kept", "seat.handed-over");
	}

	@Test
	void othersAreNotStopped() {
		this.guessing.stop("192.168.4.7", "192.168.4.7, Safari");
		assertThat(pair(code()).statusCode()).isEqualTo(200);
		this.guessing.stop("192.168.4.7", "192.168.4.7, Safari");
		assertThat(this.guessing.recent())
			.filteredOn((stop) -> stop.address().equals("192.168.4.7") && stop.stop().stopped())
			.hasSize(1);
	}

	/** What stands on the slip, which the page shows only until a tablet has joined. */
	private String code() {
		return this.slip;
	}

	private HttpResponse<String> pair(String code) {
		return new Visitor(this.port).json("POST", "/api/seat-pairings", "{\"code\":\"" + code + "\"}");
	}

}
