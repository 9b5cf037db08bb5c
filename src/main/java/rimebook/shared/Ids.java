package rimebook.shared;

import java.time.Clock;
import java.util.UUID;
import java.util.random.RandomGenerator;

/**
 * Makes time-ordered identities (UUID version 7, RFC 9562 section 5.7): 48 bits of
 * milliseconds since 1970 UTC, the rest random. Later ones sort after earlier ones to the
 * millisecond.
 */
public final class Ids {

	private final Clock clock;

	private final RandomGenerator random;

	public Ids(Clock clock, RandomGenerator random) {
		this.clock = clock;
		this.random = random;
	}

	/** Make the next identity. Safe for several threads if the generator is. */
	public UUID next() {
		long high = (this.clock.millis() << 16) | 0x7000L | (this.random.nextLong() & 0x0FFFL);
		long low = (this.random.nextLong() & 0x3FFF_FFFF_FFFF_FFFFL) | 0x8000_0000_0000_0000L;
		return new UUID(high, low);
	}

}
