package rimebook.live;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.shared.NotFoundException;

/**
 * Knows where each competition stands that somebody attends. Whoever publishes calls
 * {@link #nudge()}; since such a call can be lost, and another process on the same
 * database cannot make it, each attended competition is also looked at about once a
 * second.
 */
@Component
class MomentWatch {

	private static final Duration ATTENDED = Duration.ofMinutes(1);

	private final Map<String, Watch> watches = new ConcurrentHashMap<>();

	private final Moments moments;

	private final Followers followers;

	private final LiveSettings settings;

	private final Clock clock;

	MomentWatch(Moments moments, Followers followers, LiveSettings settings, Clock clock) {
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

	private Watch begin(String slug) {
		Watch fresh = new Watch(slug);
		fresh.look();
		Watch other = this.watches.putIfAbsent(slug, fresh);
		return (other != null) ? other : fresh;
	}

	/** Something was published: nothing known so far counts any more. */
	void nudge() {
		this.watches.values().forEach((watch) -> watch.looked = Instant.MIN);
	}

	/** Look at every attended competition now, and forget those nobody attends. */
	void lookAtAll() {
		this.watches.values().forEach((watch) -> {
			if (watch.isAttended()) {
				watch.look();
			}
			else {
				this.watches.remove(watch.slug);
			}
		});
	}

	private final class Watch {

		private final String slug;

		private volatile @Nullable Moment moment;

		private volatile Instant looked = Instant.MIN;

		private volatile Instant asked;

		Watch(String slug) {
			this.slug = slug;
			this.asked = MomentWatch.this.clock.instant();
		}

		Moment current() {
			Instant now = MomentWatch.this.clock.instant();
			this.asked = now;
			Moment known = this.moment;
			boolean recent = this.looked.isAfter(now.minus(MomentWatch.this.settings.look().multipliedBy(2)));
			return (known != null && recent) ? known : look();
		}

		/**
		 * The time is noted before the look, so that a publication in between is not
		 * taken for seen; followers hear of a change after pages are made from it.
		 */
		private synchronized Moment look() {
			Moment before = this.moment;
			this.looked = MomentWatch.this.clock.instant();
			Moment now = read(before);
			this.moment = now;
			if (before != null && !before.equals(now)) {
				MomentWatch.this.followers.tell(this.slug, now.since(before));
			}
			return now;
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
