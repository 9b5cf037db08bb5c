package rimebook.live;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;

/** Five seconds at least, and no more than 2,000 a second. */
class PollPaceTests {

	private final Ticking clock = new Ticking();

	private final PollPace pace = new PollPace(mock(), Stage.SETTINGS, this.clock);

	@Test
	void fewLookAgainSoon() {
		assertThat(waitOf(100)).isEqualTo(5);
		assertThat(waitOf(100)).isEqualTo(5);
	}

	@Test
	void manyLookLater() {
		assertThat(waitOf(20_000)).isEqualTo(10);
		assertThat(waitOf(20_000)).as("and stay there").isEqualTo(10);
		assertThat(waitOf(1000)).isEqualTo(5);
	}

	@Test
	void nobodyWaitsLongerThanAMinute() {
		waitOf(1_000_000);
		assertThat(waitOf(1_000_000)).isEqualTo(60);
	}

	/** Let so many pages look once in each wait; what they are told in the end. */
	private long waitOf(int pages) {
		long wait = this.pace.next();
		for (int i = 0; i < pages; i++) {
			wait = this.pace.next();
		}
		this.clock.now = this.clock.now.plusSeconds(wait);
		return this.pace.next();
	}

	private static final class Ticking extends Clock {

		private Instant now = Instant.parse("2026-02-14T12:00:00Z");

		@Override
		public Instant instant() {
			return this.now;
		}

		@Override
		public ZoneId getZone() {
			return ZoneOffset.UTC;
		}

		@Override
		public Clock withZone(ZoneId zone) {
			return this;
		}

	}

}
