package rimebook.demo;

import java.time.Duration;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.SmartLifecycle;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Builds the demonstration at the first start and keeps the simulated panel going. It is
 * built before the server listens, so that the first page has something to show and
 * nobody is asked to make an administrator.
 */
@Component
@Profile("demo")
@EnableConfigurationProperties(DemoSettings.class)
class DemoRunner implements SmartLifecycle {

	/** Long before the server, which comes among the last. */
	private static final int BEFORE_THE_SERVER = 0;

	private static final Log log = LogFactory.getLog(DemoRunner.class);

	private final DemoCrew crew;

	private final DemoCompetition competition;

	private final SimulatedPanel panel;

	private final Duration pace;

	private final Thread thread = new Thread(this::play, "simulated-panel");

	private boolean paused;

	private int steps;

	private boolean stopped;

	private volatile boolean running;

	DemoRunner(DemoCrew crew, DemoCompetition competition, SimulatedPanel panel, DemoSettings settings) {
		this.crew = crew;
		this.competition = competition;
		this.panel = panel;
		this.pace = settings.pace();
		this.paused = settings.paused();
		this.thread.setDaemon(true);
	}

	@Override
	public void start() {
		this.crew.arrive();
		if (!this.competition.isThere()) {
			this.competition.build();
		}
		this.crew.readSlips(this.competition.id());
		this.running = true;
	}

	/** The tablets of the simulated panel send over HTTP, so the server comes first. */
	@EventListener(ApplicationReadyEvent.class)
	void skate() {
		this.thread.start();
	}

	@Override
	public synchronized void stop() {
		this.running = false;
		this.stopped = true;
		this.thread.interrupt();
	}

	@Override
	public boolean isRunning() {
		return this.running;
	}

	@Override
	public int getPhase() {
		return BEFORE_THE_SERVER;
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
