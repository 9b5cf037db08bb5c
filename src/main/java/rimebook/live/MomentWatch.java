package rimebook.live;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.shared.NotFoundException;

/**
 * Knows where each competition stands that somebody attends. Whoever publishes calls
 * {@link #nudge()}; since such a call can be lost, and another process on the same
 * database cannot make it, each attended competition is also looked at about once a
 * second. What moved is told by whoever calls {@link #lookAtAll}, so that no visitor who
 * happens to see it first spends time on that.
 */
@Component
class MomentWatch {

	private static final Duration ATTENDED = Duration.ofMinutes(1);

	private final Map<String, Watch> watches = new ConcurrentHashMap<>();

	private final AtomicLong nudges = new AtomicLong();

	private final MomentReader moments;

	private final FollowerRegister followers;

	private final LiveSettings settings;

	private final Clock clock;

	MomentWatch(MomentReader moments, FollowerRegister followers, LiveSettings settings, Clock clock) {
		this.moments = moments;
		this.followers = followers;
		this.settings = settings;
		this.clock = clock;
	}

	/**
	 * Where the competition stands; asks the database only if nobody did for a while.
	 * @throws NotFoundException if there is none or it is not public
	 */
	Moment current(String slug) {
		Watch watch = this.watches.get(slug);
		return ((watch != null) ? watch : begin(slug)).current();
	}

	/**
	 * Where the competition stands as far as that is known without asking the database,
	 * {@code null} if it is not.
	 */
	@Nullable Moment known(String slug) {
		Watch watch = this.watches.get(slug);
		return (watch != null) ? watch.known() : null;
	}

	private Watch begin(String slug) {
		Watch fresh = new Watch(slug);
		fresh.look();
		Watch other = this.watches.putIfAbsent(slug, fresh);
		return (other != null) ? other : fresh;
	}

	/** Something was published: nothing known so far counts any more. */
	void nudge() {
		this.nudges.incrementAndGet();
	}

	/**
	 * Look at every attended competition now, and forget those nobody attends. Only one
	 * thread at a time may call this.
	 * @param herald given what moved since the last call
	 */
	void lookAtAll(Consumer<News> herald) {
		this.watches.values().forEach((watch) -> {
			if (watch.isAttended()) {
				watch.look();
				watch.report(herald);
			}
			else {
				this.watches.remove(watch.slug);
			}
		});
	}

	/**
	 * That a competition moved.
	 *
	 * @param competition its slug
	 * @param now where it stands
	 * @param signals what to tell those who follow it
	 */
	record News(String competition, Moment now, List<Signal> signals) {
	}

	/**
	 * What was seen.
	 *
	 * @param at when the look began
	 * @param nudges how many nudges had come by then
	 */
	private record Seen(Moment moment, Instant at, long nudges) {
	}

	private final class Watch {

		private final String slug;

		private volatile @Nullable Seen seen;

		/** What followers know: whoever comes is told everything, so the first look. */
		private volatile @Nullable Moment reported;

		private volatile Instant asked;

		Watch(String slug) {
			this.slug = slug;
			this.asked = MomentWatch.this.clock.instant();
		}

		Moment current() {
			this.asked = MomentWatch.this.clock.instant();
			Moment known = known(this.asked);
			return (known != null) ? known : lookUnlessKnown();
		}

		@Nullable Moment known() {
			this.asked = MomentWatch.this.clock.instant();
			return known(this.asked);
		}

		/** Of many that come at once one looks, the others wait for what it sees. */
		private synchronized Moment lookUnlessKnown() {
			Moment known = known(MomentWatch.this.clock.instant());
			return (known != null) ? known : look();
		}

		private @Nullable Moment known(Instant now) {
			Seen last = this.seen;
			Instant lately = now.minus(MomentWatch.this.settings.look().multipliedBy(2));
			return (last != null && last.nudges() == MomentWatch.this.nudges.get() && last.at().isAfter(lately))
					? last.moment() : null;
		}

		/**
		 * Time and nudges are noted before the look: what is published during it is not
		 * taken for seen.
		 */
		private synchronized Moment look() {
			Seen before = this.seen;
			Instant at = MomentWatch.this.clock.instant();
			long nudges = MomentWatch.this.nudges.get();
			Moment now = read((before != null) ? before.moment() : null);
			this.seen = new Seen(now, at, nudges);
			if (this.reported == null) {
				this.reported = now;
			}
			return now;
		}

		private void report(Consumer<News> herald) {
			Seen last = this.seen;
			Moment known = this.reported;
			if (last != null && known != null && !known.equals(last.moment())) {
				this.reported = last.moment();
				herald.accept(new News(this.slug, last.moment(), last.moment().since(known)));
			}
		}

		private Moment read(@Nullable Moment before) {
			try {
				return MomentWatch.this.moments.read(this.slug, before);
			}
			catch (NotFoundException ex) {
				MomentWatch.this.watches.remove(this.slug, this);
				throw ex;
			}
		}

		private boolean isAttended() {
			Instant lately = MomentWatch.this.clock.instant().minus(ATTENDED);
			return this.asked.isAfter(lately) || MomentWatch.this.followers.follow(this.slug);
		}

	}

}
