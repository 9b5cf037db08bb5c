package rimebook.results;

import java.time.Instant;

/** Lets the module that hears protests say how long it does after a posting. */
public interface ProtestTimes {

	/** The end of the time for protests against anything but the computation, UTC. */
	Instant conductUntil(Instant postedAt);

	/** The end of the time for protests against the computation, UTC. */
	Instant calculationUntil(Instant postedAt);

}
