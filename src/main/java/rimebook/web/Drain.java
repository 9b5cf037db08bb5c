package rimebook.web;

import java.time.Duration;
import java.util.Set;
import java.util.concurrent.TimeUnit;

import org.springframework.context.ApplicationListener;
import org.springframework.context.SmartLifecycle;
import org.springframework.context.event.ContextClosedEvent;

/**
 * How a node leaves that is one of several behind a proxy. From the first moment of its
 * end it answers 502 to whatever may be asked twice, so that the proxy asks the other
 * node and soon sends nobody here any more; forms that come nevertheless are still taken.
 * Its streams end, and their pages come to the other node. Only after that does it stop
 * listening, so no request meets a closed door. The proxy's side of it lies in
 * {@code deploy/nginx}.
 */
class Drain implements SmartLifecycle, ApplicationListener<ContextClosedEvent> {

	/** Methods that a proxy repeats by itself. */
	static final Set<String> MAY_BE_ASKED_TWICE = Set.of("GET", "HEAD", "PUT", "DELETE", "OPTIONS");

	/** Says that it is going, too, in its own way. */
	static final String HEALTH = "/actuator/health";

	private final Duration time;

	private volatile boolean on;

	private volatile boolean running;

	/**
	 * @param time how long it takes; 0 for a node that is alone
	 */
	Drain(Duration time) {
		this.time = time;
	}

	boolean isOn() {
		return this.on;
	}

	/** Before anything stops, so that streams which end are not opened here again. */
	@Override
	public void onApplicationEvent(ContextClosedEvent closed) {
		this.on = !this.time.isZero();
	}

	@Override
	public void start() {
		this.on = false;
		this.running = true;
	}

	/** Wait, with the service as it is. */
	@Override
	public void stop() {
		this.running = false;
		if (this.on) {
			try {
				TimeUnit.MILLISECONDS.sleep(this.time.toMillis());
			}
			catch (InterruptedException ex) {
				Thread.currentThread().interrupt();
			}
		}
	}

	@Override
	public boolean isRunning() {
		return this.running;
	}

	/** After the streams, before the server. */
	@Override
	public int getPhase() {
		return DEFAULT_PHASE - 1;
	}

}
