package rimebook.demo;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.springframework.context.annotation.Profile;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.shared.RimebookException;
import rimebook.stand.Stand;
import rimebook.stand.StandView;

/**
 * A referee who calls and closes, and a panel whose tablets send their cards over HTTP.
 * What it does next is read from the service each time, so it goes on after a restart
 * where it was. A seat that a visitor holds is left to the visitor; a card that does not
 * come from there after a while is sent from inside, so that the day goes on.
 */
@Component
@Profile("demo")
class SimulatedPanel {

	private static final Log log = LogFactory.getLog(SimulatedPanel.class);

	private static final Duration LEFT_TO_VISITOR = Duration.ofSeconds(45);

	private final DemoCompetition demo;

	private final SegmentRun run;

	private final Stand stand;

	private final DemoSeats seats;

	private final Environment environment;

	private final PointsRehearsal points;

	private final DemoPerformances files = new DemoPerformances("free");

	private final Map<SeatId, PanelTablet> tablets = new HashMap<>();

	private final HttpClient http = HttpClient.newHttpClient();

	SimulatedPanel(DemoCompetition demo, SegmentRun run, Stand stand, DemoSeats seats, PointsRehearsal points,
			Environment environment) {
		this.demo = demo;
		this.run = run;
		this.stand = stand;
		this.seats = seats;
		this.points = points;
		this.environment = environment;
	}

	/** The first segment that is not finished, else the last, as the referee sees it. */
	StandView look() {
		StandView view = null;
		for (SegmentId segment : this.demo.underWay()) {
			view = this.stand.ofSegment(segment);
			if (!view.isFinished()) {
				return view;
			}
		}
		return Objects.requireNonNull(view);
	}

	/**
	 * Let one team skate and be marked.
	 * @param skating how long until the first card comes
	 * @param between how long from one card to the next
	 * @return whether there was a team
	 */
	boolean playOne(Duration skating, Duration between) throws InterruptedException {
		return playOne(skating, between, LEFT_TO_VISITOR);
	}

	/**
	 * The same.
	 * @param visitors how long to wait for the cards of visitors
	 */
	boolean playOne(Duration skating, Duration between, Duration visitors) throws InterruptedException {
		StandView view = look();
		if (view.now() == null && view.next() == null) {
			return false;
		}
		PerformanceView performance = (view.now() != null) ? view.now().row().performance() : call(view);
		Thread.sleep(skating.toMillis());
		if (view.event().isJudgedByPoints()) {
			this.points.call(performance, this.files);
		}
		for (SeatView seat : this.seats.withCard(view.event().id())) {
			sendIfMissing(seat, performance);
			Thread.sleep(between.toMillis());
		}
		authorise(view, performance);
		awaitVisitors(visitors);
		authorise(view, performance);
		close(performance);
		return true;
	}

	private PerformanceView call(StandView view) {
		PerformanceView next = Objects.requireNonNull(view.next()).performance();
		this.run.call(next.id(), next.version(), DemoCrew.REFEREE);
		return this.run.performance(next.id());
	}

	/** Again after waiting, since a visitor may have called something else meanwhile. */
	private void authorise(StandView view, PerformanceView performance) {
		if (view.event().isJudgedByPoints()) {
			this.points.authorise(performance);
		}
	}

	private void close(PerformanceView performance) {
		try {
			this.run.close(performance.id(), this.run.performance(performance.id()).version(), DemoCrew.REFEREE);
		}
		catch (RimebookException ex) {
			log.info("The simulated referee leaves this to a visitor: " + ex.getMessage());
		}
	}

	private void sendIfMissing(SeatView seat, PerformanceView performance) throws InterruptedException {
		StandView.Now now = look().now();
		if (now == null || hasSent(now, seat)) {
			return;
		}
		try {
			PanelTablet tablet = this.tablets.computeIfAbsent(seat.id(), (id) -> tablet());
			this.seats.give(seat.event());
			if (!tablet.isPaired()) {
				join(tablet, seat);
			}
			if (tablet.isPaired()) {
				send(tablet, seat, performance, now.row().team());
			}
		}
		catch (IOException ex) {
			log.info("A simulated tablet had no answer", ex);
		}
	}

	private void send(PanelTablet tablet, SeatView seat, PerformanceView performance, String team)
			throws IOException, InterruptedException {
		StandView view = look();
		if (view.event().isJudgedByPoints()) {
			tablet.send(UUID.randomUUID(), performance.id(), this.points.marks(performance, seat, this.files));
		}
		else {
			tablet.send(UUID.randomUUID(), performance.id(),
					PlausibleMarks.of(seat.number(), team, view.segment().name()));
		}
	}

	private PanelTablet tablet() {
		return new PanelTablet(this.http,
				URI.create("http://localhost:" + this.environment.getRequiredProperty("local.server.port")));
	}

	private void join(PanelTablet tablet, SeatView seat) throws IOException, InterruptedException {
		Optional<String> code = this.seats.codeIfFree(seat.id());
		if (code.isPresent()) {
			tablet.pair(code.get());
		}
	}

	private static boolean hasSent(StandView.Now now, SeatView seat) {
		return now.cards().seats().stream().anyMatch((card) -> card.place().equals(seat.place()) && card.isThere());
	}

	/** Wait for the cards of seats that visitors hold; then send what still lacks. */
	private void awaitVisitors(Duration longest) throws InterruptedException {
		long patience = longest.toSeconds();
		while (isSomethingMissing() && patience-- > 0) {
			this.seats.give(look().event().id());
			Thread.sleep(1000);
		}
		StandView view = look();
		if (view.now() != null) {
			PerformanceView performance = view.now().row().performance();
			for (SeatView seat : this.seats.judges(view.event().id())) {
				sendIfMissing(seat, performance);
				sendFromInsideIfMissing(seat, performance);
			}
		}
	}

	private void sendFromInsideIfMissing(SeatView seat, PerformanceView performance) {
		StandView view = look();
		if (view.now() == null || hasSent(view.now(), seat)) {
			return;
		}
		if (view.event().isJudgedByPoints()) {
			this.points.send(performance, seat, this.files);
		}
		else {
			this.demo.send(performance, seat, view.segment());
		}
	}

	private boolean isSomethingMissing() {
		StandView.Now now = look().now();
		return now != null && !now.isComplete();
	}

}
