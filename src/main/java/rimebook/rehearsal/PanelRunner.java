package rimebook.rehearsal;

import java.time.Duration;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;

/**
 * Keeps the simulated panel going on a thread of its own: paused, a team at a time, at a
 * pace, or marking only while the crew does everything else.
 */
public class PanelRunner {

	private static final Log log = LogFactory.getLog(PanelRunner.class);

	/** How often it looks whom the crew has called, or whether a segment was opened. */
	private static final Duration LOOK = Duration.ofMillis(500);

	private final SimulatedPanel panel;

	private final Runnable beforeEach;

	private final boolean endless;

	private final Thread thread = new Thread(this::play, "simulated-panel");

	private Mode mode;

	private Duration pace;

	private int steps;

	private boolean stopped;

	/**
	 * @param pace from one team's call to the next
	 * @param paused whether it waits to be started or stepped
	 */
	public PanelRunner(SimulatedPanel panel, Duration pace, boolean paused) {
		this(panel, () -> {
		}, false, pace, paused ? Mode.PAUSED : Mode.EVERYTHING);
	}

	/**
	 * @param beforeEach makes something ready before each team, on the panel's thread
	 * @param endless whether it goes on looking for work once there is none
	 */
	PanelRunner(SimulatedPanel panel, Runnable beforeEach, boolean endless, Duration pace, Mode mode) {
		this.panel = panel;
		this.beforeEach = beforeEach;
		this.endless = endless;
		this.pace = pace;
		this.mode = mode;
		this.thread.setDaemon(true);
	}

	/** The tablets of the simulated panel send over HTTP, so the server comes first. */
	public void start() {
		this.thread.start();
	}

	/** Stop for ever. */
	public synchronized void stop() {
		this.stopped = true;
		this.thread.interrupt();
	}

	/** Let the team on the ice come to its end and wait. */
	public void pause() {
		become(Mode.PAUSED);
	}

	/** Go on by itself. */
	public void resume() {
		become(Mode.EVERYTHING);
	}

	synchronized void become(Mode mode) {
		this.mode = mode;
		notifyAll();
	}

	/** Let one more team skate at once, and pause behind it. */
	public synchronized void step() {
		this.mode = Mode.PAUSED;
		this.steps++;
		notifyAll();
	}

	/** Tell whether it waits. */
	public synchronized boolean isPaused() {
		return this.mode == Mode.PAUSED;
	}

	synchronized Mode mode() {
		return this.mode;
	}

	/** From one team's call to the next. */
	public synchronized Duration pace() {
		return this.pace;
	}

	synchronized void pace(Duration pace) {
		this.pace = pace;
	}

	private void play() {
		try {
			boolean more = true;
			while (more || this.endless) {
				boolean stepped = awaitTurn();
				more = playOne(stepped);
				if (!more) {
					Thread.sleep(LOOK.toMillis());
				}
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

	/** Wait until there is something to do; tell whether it is a single step. */
	private synchronized boolean awaitTurn() throws InterruptedException {
		while (this.mode == Mode.PAUSED && this.steps == 0 && !this.stopped) {
			wait();
		}
		if (this.steps > 0) {
			this.steps--;
			return true;
		}
		return false;
	}

	private boolean playOne(boolean stepped) throws InterruptedException {
		Duration share = stepped ? Duration.ZERO : pace().dividedBy(20);
		try {
			if (!stepped && mode() == Mode.CARDS) {
				this.panel.markOnIce(share);
				return false;
			}
			this.beforeEach.run();
			boolean more = this.panel.playOne(share.multipliedBy(9), share);
			Thread.sleep(share.multipliedBy(4).toMillis());
			return more;
		}
		catch (RuntimeException ex) {
			// Somebody may act as the referee at the same time; look again and go on.
			log.info("The simulated panel was interrupted by somebody else's act: " + ex.getMessage());
			Thread.sleep(Math.max(500, share.toMillis()));
			return true;
		}
	}

	/** How much it does. */
	enum Mode {

		/** Nothing. */
		PAUSED,

		/** Cards alone: the crew calls and closes. */
		CARDS,

		/** It is the whole crew. */
		EVERYTHING

	}

}
