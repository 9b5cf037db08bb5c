package rimebook.demo;

import java.time.Duration;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Builds the demonstration at the first start and keeps the simulated panel going. */
@Component
@Profile("demo")
@EnableConfigurationProperties(DemoSettings.class)
class DemoRunner {

	private static final Log log = LogFactory.getLog(DemoRunner.class);

	private final DemoCrew crew;

	private final DemoCompetition competition;

	private final SimulatedPanel panel;

	private final Duration pace;

	private final Thread thread = new Thread(this::play, "simulated-panel");

	private boolean paused;

	private int steps;

	private boolean stopped;

	DemoRunner(DemoCrew crew, DemoCompetition competition, SimulatedPanel panel, DemoSettings settings) {
		this.crew = crew;
		this.competition = competition;
		this.panel = panel;
		this.pace = settings.pace();
		this.paused = settings.paused();
		this.thread.setDaemon(true);
	}

	/** First of all listeners, so that nobody is asked to make an administrator. */
	@EventListener
	@Order(0)
	void on(ApplicationReadyEvent ready) {
		this.crew.arrive();
		if (!this.competition.isThere()) {
			this.competition.build();
		}
		this.thread.start();
	}

	@EventListener
	synchronized void on(ContextClosedEvent closed) {
		this.stopped = true;
		this.thread.interrupt();
	}

	synchronized void pause() {
		this.paused = true;
	}

	synchronized void resume() {
		this.paused = false;
		notifyAll();
	}

	/** Let one more team skate at once, and pause behind it. */
	synchronized void step() {
		this.paused = true;
		this.steps++;
		notifyAll();
	}

	synchronized boolean isPaused() {
		return this.paused;
	}

	Duration pace() {
		return this.pace;
	}

	private void play() {
		try {
			boolean more = true;
			while (more) {
				boolean stepped = awaitTurn();
				more = playOne(stepped);
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

	/** Wait until there is something to do; tell whether it is a single step. */
	private synchronized boolean awaitTurn() throws InterruptedException {
		while (this.paused && this.steps == 0 && !this.stopped) {
			wait();
		}
		if (this.steps > 0) {
			this.steps--;
			return true;
		}
		return false;
	}

	private boolean playOne(boolean stepped) throws InterruptedException {
		Duration share = stepped ? Duration.ZERO : this.pace.dividedBy(20);
		try {
			boolean more = this.panel.playOne(share.multipliedBy(9), share);
			Thread.sleep(share.multipliedBy(4).toMillis());
			return more;
		}
		catch (RuntimeException ex) {
			// A visitor may act as the referee at the same time; look again and go on.
			log.info("The simulated panel was interrupted by somebody else's act: " + ex.getMessage());
			Thread.sleep(Math.max(500, share.toMillis()));
			return true;
		}
	}

}
