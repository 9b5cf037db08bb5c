package rimebook.live;

import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.pages.Network;

/**
 * All open connections, by competition. There are never more than the settings allow, in
 * all and from one address; who comes then polls. They are no cache, from which the least
 * used may be dropped: everybody in here is told, or has left.
 */
@Component
class FollowerRegister {

	private static final int RETRY = 2000;

	/**
	 * How many fetches a second are no burden: half of what one core sends of kept pages.
	 */
	private static final int FETCHES_A_SECOND = 25_000;

	private final Map<String, Set<Follower>> byCompetition = new ConcurrentHashMap<>();

	private final Map<String, Integer> byAddress = new ConcurrentHashMap<>();

	private final AtomicInteger count = new AtomicInteger();

	private final LiveSettings settings;

	private final Clock clock;

	FollowerRegister(LiveSettings settings, Clock clock) {
		this.settings = settings;
		this.clock = clock;
	}

	/**
	 * Let somebody follow a competition on a line; they hear what is told from now on.
	 * @param address whence they come
	 * @param wish how they want it
	 * @return nobody if there are as many as there may be
	 */
	Optional<Follower> join(String slug, String address, StreamWish wish, Line line) {
		String group = Network.of(address);
		if (!takePlace(group)) {
			return Optional.empty();
		}
		Follower follower = new Follower(line, wish, group, this.clock.instant(), retry(),
				(gone) -> remove(slug, gone));
		this.byCompetition.compute(slug, (key, known) -> {
			Set<Follower> followers = (known != null) ? known : ConcurrentHashMap.newKeySet();
			followers.add(follower);
			return followers;
		});
		return Optional.of(follower);
	}

	private boolean takePlace(String group) {
		if (this.count.incrementAndGet() > this.settings.streams()) {
			this.count.decrementAndGet();
			return false;
		}
		if (this.byAddress.merge(group, 1, Integer::sum) > this.settings.streamsPerAddress()) {
			givePlace(group);
			return false;
		}
		return true;
	}

	private void givePlace(String group) {
		this.count.decrementAndGet();
		this.byAddress.computeIfPresent(group, (key, there) -> (there > 1) ? there - 1 : null);
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
		givePlace(gone.address());
	}

	/**
	 * Tell those who follow a competition and look at certain pages.
	 * @param parts what differs on its pages, as far as it is at hand
	 * @param whose given what they look at, {@code null} if they only want to hear that
	 * something moved
	 */
	void tell(String slug, List<Signal> signals, Map<RenditionKey, PartEvent> parts,
			Predicate<@Nullable RenditionKey> whose) {
		Instant now = this.clock.instant();
		this.byCompetition.getOrDefault(slug, Set.of())
			.stream()
			.filter((follower) -> whose.test(follower.page()))
			.forEach((follower) -> follower.tell(signals, parts, now));
	}

	boolean follow(String slug) {
		return this.byCompetition.containsKey(slug);
	}

	int count() {
		return this.count.get();
	}

	/** Over how many milliseconds followers spread what they fetch after a signal. */
	int within() {
		return 1000 * count() / FETCHES_A_SECOND;
	}

	/**
	 * Give everybody a sign of life. Who left the last signs unread, or has been here for
	 * long, is let go; a browser comes back by itself.
	 */
	void beat() {
		Instant now = this.clock.instant();
		Instant unread = now.minus(this.settings.patience());
		Instant longAgo = now.minus(this.settings.stay());
		int within = within();
		all().forEach((follower) -> {
			if (follower.isUnreadSince(unread) || follower.isHereSince(longAgo)) {
				follower.leave();
			}
			else {
				follower.beat(within, now);
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
