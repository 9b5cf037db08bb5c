package rimebook.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Expiry;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;

/**
 * How often something may fail within a time. Each attempt takes a token, each success
 * gives it back, so that only failures count, however many come at once. What was left
 * alone for as long as its failures count is forgotten, since it would allow everything
 * again; should somebody come from more places than are kept, those that fail often are
 * kept.
 */
class AttemptLimits {

	static final int MOST_KEPT = 20_000;

	private final Cache<String, Counted> counts;

	private final TimeMeter time;

	AttemptLimits(Clock clock) {
		ClockMeter meter = new ClockMeter(clock);
		this.time = meter;
		this.counts = Caffeine.newBuilder()
			.maximumSize(MOST_KEPT)
			.expireAfter(Expiry.accessing((String key, Counted counted) -> counted.within()))
			.ticker(meter::currentTimeNanos)
			.executor(Runnable::run)
			.build();
	}

	/**
	 * Take a token.
	 * @return how long to wait, zero if there was one
	 */
	Duration take(Attempt attempt) {
		ConsumptionProbe probe = bucket(attempt).tryConsumeAndReturnRemaining(1);
		return probe.isConsumed() ? Duration.ZERO : Duration.ofNanos(probe.getNanosToWaitForRefill());
	}

	void giveBack(Attempt attempt) {
		bucket(attempt).addTokens(1);
	}

	/** How many are kept. */
	long kept() {
		this.counts.cleanUp();
		return this.counts.estimatedSize();
	}

	private Bucket bucket(Attempt attempt) {
		return this.counts.get(attempt.key(), (key) -> new Counted(fresh(attempt), attempt.within())).bucket();
	}

	private Bucket fresh(Attempt attempt) {
		return Bucket.builder()
			.withCustomTimePrecision(this.time)
			.addLimit((limit) -> limit.capacity(attempt.most()).refillGreedy(attempt.most(), attempt.within()))
			.build();
	}

	/**
	 * What is counted together.
	 *
	 * @param key the kind of attempt and who makes it
	 * @param most how many may fail
	 * @param within in which time
	 */
	record Attempt(String key, int most, Duration within) {

		/** Longer than any name that is known here. */
		private static final int LONGEST = 200;

		/** What is kept of a key is short, however long a name somebody types. */
		Attempt {
			key = (key.length() > LONGEST) ? key.substring(0, LONGEST) : key;
		}

		static Attempt perMinute(String key, int most) {
			return new Attempt(key, most, Duration.ofMinutes(1));
		}

		static Attempt perHour(String key, int most) {
			return new Attempt(key, most, Duration.ofHours(1));
		}

	}

	private record Counted(Bucket bucket, Duration within) {
	}

	private record ClockMeter(Clock clock) implements TimeMeter {

		@Override
		public long currentTimeNanos() {
			return Duration.between(Instant.EPOCH, this.clock.instant()).toNanos();
		}

		@Override
		public boolean isWallClockBased() {
			return true;
		}

	}

}
