package rimebook.demo;

import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.SmartLifecycle;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

import rimebook.rehearsal.PanelCast;
import rimebook.rehearsal.PanelRunner;
import rimebook.rehearsal.SimulatedPanel;
import rimebook.rehearsal.WithSimulatedPanel;

/**
 * Builds the demonstration at the first start and keeps the simulated panel going. It is
 * built before the server listens, so that the first page has something to show and
 * nobody is asked to make an administrator.
 */
@Component
@Profile("demo")
@WithSimulatedPanel
@EnableConfigurationProperties(DemoSettings.class)
class DemoRunner implements SmartLifecycle {

	/** Long before the server, which comes among the last. */
	private static final int BEFORE_THE_SERVER = 0;

	private final DemoCrew crew;

	private final DemoCompetition competition;

	private final DemoCommentary commentary;

	private final DemoManager manager;

	private final PanelRunner panel;

	private volatile boolean running;

	DemoRunner(DemoCrew crew, DemoCompetition competition, DemoCommentary commentary, DemoManager manager,
			SimulatedPanel panel, DemoSettings settings) {
		this.manager = manager;
		this.commentary = commentary;
		this.crew = crew;
		this.competition = competition;
		this.panel = new PanelRunner(panel, settings.pace(), settings.paused());
	}

	@Override
	public void start() {
		this.crew.arrive();
		if (!this.competition.isThere()) {
			this.competition.build();
		}
		this.crew.readSlips(this.competition.id());
		this.commentary.arrive(this.competition.view());
		this.manager.arrive(this.competition.view());
		this.running = true;
	}

	/** The tablets of the simulated panel send over HTTP, so the server comes first. */
	@EventListener(ApplicationReadyEvent.class)
	void skate() {
		this.panel.start();
	}

	@Override
	public void stop() {
		this.running = false;
		this.panel.stop();
	}

	@Override
	public boolean isRunning() {
		return this.running;
	}

	@Override
	public int getPhase() {
		return BEFORE_THE_SERVER;
	}

	@Bean
	static PanelCast demoCast() {
		return new PanelCast(DemoCrew.REFEREE, DemoCrew.TECHNICAL);
	}

	/** The panel, to be paced. */
	PanelRunner panel() {
		return this.panel;
	}

}
