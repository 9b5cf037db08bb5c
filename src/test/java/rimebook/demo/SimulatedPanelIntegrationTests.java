package rimebook.demo;

import java.time.Duration;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.ActiveProfiles;
import tools.jackson.databind.json.JsonMapper;

import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.rehearsal.KnownCodes;
import rimebook.rehearsal.SimulatedPanel;
import rimebook.stand.StandView;
import rimebook.testsupport.Visitor;

import static org.assertj.core.api.Assertions.assertThat;

/** A visitor who takes a seat of the demonstration keeps it. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
		properties = { "spring.datasource.url=jdbc:h2:mem:demo-panel;DB_CLOSE_DELAY=-1", "rimebook.demo.paused=true" })
@ActiveProfiles({ "demo", "rehearsal" })
class SimulatedPanelIntegrationTests {

	private static final JsonMapper JSON = JsonMapper.shared();

	@Autowired
	private SimulatedPanel panel;

	@Autowired
	private KnownCodes codes;

	@Autowired
	private Panels panels;

	@Autowired
	private SegmentRun run;

	@LocalServerPort
	private int port;

	private Visitor visitor;

	private SeatView seat;

	private String token;

	@BeforeEach
	void aVisitorTakesASeatBeforeTheNextTeam() {
		this.visitor = new Visitor(this.port);
		this.seat = this.panels.judges(this.panel.look().event().id()).get(2);
		String code = this.codes.of(this.seat).orElseThrow();
		this.token = JSON
			.readTree(this.visitor.json("POST", "/api/seat-pairings", JSON.writeValueAsString(Map.of("code", code)))
				.body())
			.get("token")
			.asString();
		assertThat(look()).isEqualTo(200);
	}

	@AfterEach
	void theVisitorLeaves() {
		this.panels.issueCode(this.seat.id(), DemoCrew.REFEREE);
	}

	@Test
	void aSeatThatAVisitorHoldsIsLeftToTheVisitor() throws Exception {
		CompletableFuture<Boolean> played = played(Duration.ofSeconds(90));
		StandView.Now now = allButOneSent();
		assertThat(look()).as("the simulated tablet has not taken the seat").isEqualTo(200);
		PerformanceView performance = now.row().performance();
		assertThat(
				this.visitor.json("PUT", "/api/cards/" + UUID.randomUUID(),
						"{\"performance\":\"%s\",\"sequence\":1,\"first\":4.0,\"second\":4.1}"
							.formatted(performance.id()),
						"Authorization", "Bearer " + this.token)
					.statusCode())
			.isLessThan(300);
		assertThat(played.get()).isTrue();
		assertThat(this.run.performance(performance.id()).status()).isEqualTo(PerformanceStatus.CLOSED);
		assertThat(look()).isEqualTo(200);
	}

	/** The visitor only looks on: the day goes on, and the seat stays theirs. */
	@Test
	void aCardThatDoesNotComeIsSentFromInside() throws Exception {
		StandView before = this.panel.look();
		assertThat(played(Duration.ZERO).get()).isTrue();
		assertThat(this.run.performance(before.next().performance().id()).status()).isEqualTo(PerformanceStatus.CLOSED);
		assertThat(look()).isEqualTo(200);
	}

	private CompletableFuture<Boolean> played(Duration visitors) {
		return CompletableFuture.supplyAsync(() -> {
			try {
				return this.panel.playOne(Duration.ZERO, Duration.ZERO, visitors);
			}
			catch (InterruptedException ex) {
				throw new IllegalStateException(ex);
			}
		});
	}

	private StandView.Now allButOneSent() throws InterruptedException {
		for (int i = 0; i < 600; i++) {
			StandView.Now now = this.panel.look().now();
			if (now != null && now.cards().missing().size() == 1) {
				assertThat(now.cards().missing()).containsExactly(this.seat.spoken());
				return now;
			}
			Thread.sleep(100);
		}
		throw new AssertionError("The simulated panel has not sent its cards");
	}

	/**
	 * What the service says to the visitor's tablet: 401 once another one has the seat.
	 */
	private int look() {
		return this.visitor.json("GET", "/api/judge/table?waiting=0", "", "Authorization", "Bearer " + this.token)
			.statusCode();
	}

}
