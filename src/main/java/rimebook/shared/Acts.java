package rimebook.shared;

import java.time.Clock;
import java.time.Instant;
import java.util.UUID;

import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/**
 * What every act that is kept needs: identities for what it writes, the time, and word of
 * it to the others, the record among them.
 */
@Component
public class Acts {

	private final Ids ids;

	private final Clock clock;

	private final ApplicationEventPublisher events;

	public Acts(Ids ids, Clock clock, ApplicationEventPublisher events) {
		this.ids = ids;
		this.clock = clock;
		this.events = events;
	}

	/** The next identity. */
	public UUID nextId() {
		return this.ids.next();
	}

	/** The time, UTC. */
	public Instant now() {
		return this.clock.instant();
	}

	/** Tell the others, within the transaction of the act. */
	public void publish(Object event) {
		this.events.publishEvent(event);
	}

}
