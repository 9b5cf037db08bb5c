package rimebook.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

import org.junit.jupiter.api.Test;

import rimebook.web.AttemptLimits.Attempt;

import static org.assertj.core.api.Assertions.assertThat;

class AttemptLimitsTests {

	private static final Attempt ONE = Attempt.perMinute("one", 3);

	private final MovingClock clock = new MovingClock();

	private final AttemptLimits limits = new AttemptLimits(this.clock);

	@Test
	void theFourthFailureWithinAMinuteHasToWait() {
		takeThree();
		assertThat(this.limits.take(ONE)).isBetween(Duration.ofSeconds(19), Duration.ofSeconds(20));
		this.clock.now = this.clock.now.plusSeconds(20);
		assertThat(this.limits.take(ONE)).isZero();
		assertThat(this.limits.take(ONE)).isPositive();
	}

	@Test
	void aSuccessDoesNotCount() {
		for (int i = 0; i < 50; i++) {
			assertThat(this.limits.take(ONE)).isZero();
			this.limits.giveBack(ONE);
		}
	}

	@Test
	void othersDoNotWait() {
		takeThree();
		assertThat(this.limits.take(Attempt.perMinute("other", 3))).isZero();
	}

	@Test
	void nothingLongIsKept() {
		assertThat(Attempt.perMinute("sign-in 192.0.2.1 " + "a".repeat(4_000_000), 3).key()).hasSize(200);
	}

	@Test
	void whoeverFailsIsNotForgottenWhileMoreFailThanAreKept() {
		for (int other = 0; other < 5 * AttemptLimits.MOST_KEPT; other++) {
			this.limits.take(Attempt.perMinute("other " + other, 3));
			if (other % 1000 < 3) {
				this.limits.take(ONE);
			}
		}
		assertThat(this.limits.take(ONE)).isPositive();
		assertThat(this.limits.kept()).isLessThanOrEqualTo(AttemptLimits.MOST_KEPT);
	}

	@Test
	void whatWouldAllowEverythingAgainIsForgotten() {
		takeThree();
		this.limits.take(Attempt.perHour("long", 3));
		this.clock.now = this.clock.now.plusSeconds(59);
		assertThat(this.limits.kept()).isEqualTo(2);
		this.clock.now = this.clock.now.plusSeconds(2);
		assertThat(this.limits.kept()).isEqualTo(1);
		takeThree();
	}

	private void takeThree() {
		for (int i = 0; i < 3; i++) {
			assertThat(this.limits.take(ONE)).isZero();
		}
	}

	private static final class MovingClock extends Clock {

		private Instant now = Instant.parse("2026-11-28T09:00:00Z");

		@Override
		public ZoneId getZone() {
			return ZoneOffset.UTC;
		}

		@Override
		public Clock withZone(ZoneId zone) {
			return this;
		}

		@Override
		public Instant instant() {
			return this.now;
		}

	}

}
