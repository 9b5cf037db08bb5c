package rimebook.live;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

import jakarta.servlet.AsyncContext;
import org.springframework.stereotype.Component;

/** All open connections, by competition. */
@Component
class Followers {

	private static final int RETRY = 2000;

	private final Map<String, Set<Follower>> byCompetition = new ConcurrentHashMap<>();

	private final LiveSettings settings;

	private final Clock clock;

	Followers(LiveSettings settings, Clock clock) {
		this.settings = settings;
		this.clock = clock;
	}

	/** Let a connection follow a competition; it hears what is told from now on. */
	Follower join(String slug, AsyncContext connection) throws IOException {
		Follower follower = new Follower(connection, this.clock.instant(), retry(), (gone) -> remove(slug, gone));
		this.byCompetition.compute(slug, (key, known) -> {
			Set<Follower> followers = (known != null) ? known : ConcurrentHashMap.newKeySet();
			followers.add(follower);
			return followers;
		});
		return follower;
	}

	/** Spread over two seconds, so that a restart is not met by everybody at once. */
	private int retry() {
		return RETRY + (count() * 37) % RETRY;
	}

	private void remove(String slug, Follower gone) {
		this.byCompetition.computeIfPresent(slug, (key, followers) -> {
			followers.remove(gone);
			return followers.isEmpty() ? null : followers;
		});
	}

	void tell(String slug, List<Signal> signals) {
		Instant now = this.clock.instant();
		this.byCompetition.getOrDefault(slug, Set.of()).forEach((follower) -> follower.tell(signals, now));
	}

	boolean follow(String slug) {
		return this.byCompetition.containsKey(slug);
	}

	int count() {
		return this.byCompetition.values().stream().mapToInt(Set::size).sum();
	}

	/**
	 * Give everybody a sign of life. Who left the last signs unread, or has been here for
	 * long, is let go; a browser comes back by itself.
	 */
	void beat() {
		Instant now = this.clock.instant();
		Instant unread = now.minus(this.settings.patience());
		Instant longAgo = now.minus(this.settings.stay());
		all().forEach((follower) -> {
			if (follower.isUnreadSince(unread) || follower.isHereSince(longAgo)) {
				follower.leave();
			}
			else {
				follower.beat(now);
			}
		});
	}

	void leaveAll() {
		all().forEach(Follower::leave);
	}

	private List<Follower> all() {
		return this.byCompetition.values().stream().flatMap(Collection::stream).toList();
	}

}
