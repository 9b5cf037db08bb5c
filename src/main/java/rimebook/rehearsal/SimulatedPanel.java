package rimebook.rehearsal;

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
import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.pages.HouseAddresses;
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
 * where it was. A seat that somebody holds is left to them; a card that does not come
 * from there after a while is sent from inside, so that the day goes on.
 */
public class SimulatedPanel {

	private static final Log log = LogFactory.getLog(SimulatedPanel.class);

	private static final Duration LEFT_TO_VISITOR = Duration.ofSeconds(45);

	private final PanelPlan plan;

	private final PanelCast cast;

	private final SegmentRun run;

	private final Stand stand;

	private final SharedSeats seats;

	private final HouseAddresses house;

	private final PlacementPanel placement;

	private final PointsPanel points;

	private final Map<SeatId, PanelTablet> tablets = new HashMap<>();

	private final HttpClient http = OwnService.client();

	SimulatedPanel(PanelPlan plan, PanelCast cast, SegmentRun run, Stand stand, SharedSeats seats,
			PlacementPanel placement, PointsPanel points, HouseAddresses house) {
		this.plan = plan;
		this.cast = cast;
		this.run = run;
		this.stand = stand;
		this.seats = seats;
		this.placement = placement;
		this.points = points;
		this.house = house;
	}

	/**
	 * The first segment that is not finished, else the last, as the referee sees it;
	 * {@code null} while none is open.
	 */
	public @Nullable StandView look() {
		StandView view = null;
		for (SegmentId segment : this.plan.segments()) {
			view = this.stand.ofSegment(segment);
			if (!view.isFinished()) {
				return view;
			}
		}
		return view;
	}

	private StandView.@Nullable Now onIce() {
		StandView view = look();
		return (view != null) ? view.now() : null;
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
	 * @param visitors how long to wait for the cards of seats that somebody holds
	 */
	public boolean playOne(Duration skating, Duration between, Duration visitors) throws InterruptedException {
		StandView view = look();
		if (view == null || view.now() == null && view.next() == null) {
			return false;
		}
		PerformanceView performance = (view.now() != null) ? view.now().row().performance() : call(view);
		Thread.sleep(skating.toMillis());
		if (view.event().isJudgedByPoints()) {
			this.points.call(performance, this.plan.script(performance));
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

	/**
	 * Mark the team on the ice and leave everything else to the crew: who calls, closes
	 * and, in points judging, which elements are called. Without them there is nothing to
	 * grade yet.
	 * @param between how long from one card to the next
	 */
	void markOnIce(Duration between) throws InterruptedException {
		StandView view = look();
		if (view == null || view.now() == null) {
			return;
		}
		PerformanceView performance = view.now().row().performance();
		if (view.event().isJudgedByPoints() && !this.points.isCalled(performance)) {
			return;
		}
		for (SeatView seat : this.seats.withCard(view.event().id())) {
			if (sendIfMissing(seat, performance)) {
				Thread.sleep(between.toMillis());
			}
		}
	}

	private PerformanceView call(StandView view) {
		PerformanceView next = Objects.requireNonNull(view.next()).performance();
		this.run.call(next.id(), next.version(), this.cast.referee());
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
			this.run.close(performance.id(), this.run.performance(performance.id()).version(), this.cast.referee());
		}
		catch (RimebookException ex) {
			log.info("The simulated referee leaves this to a visitor: " + ex.getMessage());
		}
	}

	/** Tell whether the service took a card. */
	private boolean sendIfMissing(SeatView seat, PerformanceView performance) throws InterruptedException {
		StandView view = look();
		if (view == null || view.now() == null || hasSent(view.now(), seat)) {
			return false;
		}
		try {
			PanelTablet tablet = this.tablets.computeIfAbsent(seat.id(), (id) -> tablet());
			this.seats.give(seat.event());
			if (!tablet.isPaired()) {
				join(tablet, seat);
			}
			return tablet.isPaired() && send(tablet, seat, performance, view);
		}
		catch (IOException ex) {
			log.info("A simulated tablet had no answer", ex);
			return false;
		}
	}

	private boolean send(PanelTablet tablet, SeatView seat, PerformanceView performance, StandView view)
			throws IOException, InterruptedException {
		if (view.event().isJudgedByPoints()) {
			return tablet.send(UUID.randomUUID(), performance.id(),
					this.points.marks(performance, seat, this.plan.script(performance)));
		}
		return tablet.send(UUID.randomUUID(), performance.id(),
				this.placement.marks(performance, seat, view.segment()));
	}

	private PanelTablet tablet() {
		return new PanelTablet(this.http, URI.create(this.house.own().base()));
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
			giveSeats();
			Thread.sleep(1000);
		}
		StandView view = look();
		if (view != null && view.now() != null) {
			PerformanceView performance = view.now().row().performance();
			for (SeatView seat : this.seats.judges(view.event().id())) {
				sendIfMissing(seat, performance);
				sendFromInsideIfMissing(seat, performance);
			}
		}
	}

	private void giveSeats() {
		StandView view = look();
		if (view != null) {
			this.seats.give(view.event().id());
		}
	}

	private void sendFromInsideIfMissing(SeatView seat, PerformanceView performance) {
		StandView view = look();
		if (view == null || view.now() == null || hasSent(view.now(), seat)) {
			return;
		}
		if (view.event().isJudgedByPoints()) {
			this.points.send(performance, seat, this.plan.script(performance));
		}
		else {
			this.placement.send(performance, seat, view.segment());
		}
	}

	private boolean isSomethingMissing() {
		StandView.Now now = onIce();
		return now != null && !now.isComplete();
	}

}
