package rimebook.live;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import java.util.function.Function;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Component;

/**
 * Keeps rendered bytes. They are good while the competition stands where it stood when
 * they were made, and for a short time at most, since names and facts may change without
 * a signal; of those who ask after that time one makes them afresh, the others are still
 * given what is there. What is asked for often stays when the room is used up, however
 * many addresses somebody asks for once.
 */
@Component
class RenditionCache {

	private static final Log log = LogFactory.getLog(RenditionCache.class);

	/** How many parts are made ahead at most, whoever made them look much asked for. */
	private static final int MOST_AHEAD = 8;

	/**
	 * How long parts are made ahead, all together; what is slower is made when asked.
	 */
	private static final Duration AHEAD = Duration.ofMillis(150);

	/** What each takes beside its bytes; so their number is bounded, too. */
	private static final int BESIDE = 1024;

	/** Pages and parts, plain and compressed, take this part of the heap at most. */
	private static final long MOST_BYTES = Runtime.getRuntime().maxMemory() / 16;

	private final Cache<RenditionKey, Shelf> shelves;

	private final MomentWatch watch;

	private final LiveSettings settings;

	private final Clock clock;

	@Autowired
	RenditionCache(MomentWatch watch, LiveSettings settings, Clock clock) {
		this(watch, settings, clock, MOST_BYTES);
	}

	/**
	 * @param mostBytes how many bytes are kept
	 */
	RenditionCache(MomentWatch watch, LiveSettings settings, Clock clock, long mostBytes) {
		this.watch = watch;
		this.settings = settings;
		this.clock = clock;
		// Whoever adds one clears up at once: later would be too late in a small heap.
		this.shelves = Caffeine.newBuilder()
			.maximumWeight(mostBytes)
			.weigher((RenditionKey key, Shelf shelf) -> Math.toIntExact(BESIDE + shelf.bytes()))
			.executor(Runnable::run)
			.build();
	}

	/** What is kept, unless the caller should have it made. */
	Optional<Rendition> kept(RenditionKey key) {
		Shelf shelf = this.shelves.getIfPresent(key.whole());
		return (shelf != null) ? shelf.kept(key.since()) : Optional.empty();
	}

	/**
	 * What is kept and good, without a look at the database and without any duty for
	 * whoever asks.
	 */
	Optional<Rendition> atHand(RenditionKey key) {
		Shelf shelf = this.shelves.getIfPresent(key.whole());
		return (shelf != null) ? shelf.atHand(key.since()) : Optional.empty();
	}

	/**
	 * What is kept or, if that is no longer good, what the maker makes now. However many
	 * ask at once, it is made once.
	 * @param competition the competition it shows, {@code null} for a list of them
	 * @param maker given the moment that it shall show, {@code null} for a list
	 */
	Rendition get(RenditionKey key, @Nullable String competition, Function<@Nullable Moment, Rendition> maker) {
		return get(key, competition, maker, null);
	}

	/**
	 * The same for a page of which only a part is asked for afterwards.
	 * @param part the part that is made ahead from now on
	 */
	Rendition get(RenditionKey key, @Nullable String competition, Function<@Nullable Moment, Rendition> maker,
			@Nullable Part part) {
		return make(key, new Shelf(competition, part), moment(competition), maker);
	}

	/** The same for such a part. */
	Rendition get(Part part, @Nullable String competition) {
		return get(part.key(), competition, part.maker(), part);
	}

	/**
	 * What whoever has an earlier one does not have of such a part; all of it where that
	 * earlier one is not known.
	 * @param since the tag of the earlier one
	 */
	Rendition get(Part part, @Nullable String competition, String since) {
		Rendition whole = get(part, competition);
		Shelf shelf = this.shelves.getIfPresent(part.key());
		if (since.isEmpty() || shelf == null) {
			return whole;
		}
		Rendition difference = shelf.earlier.difference(whole, since);
		weighAgain(part.key(), shelf);
		return difference;
	}

	/**
	 * Know what a page showed that was sent whole, since it asks only for what differs.
	 */
	void shown(Part part, @Nullable String competition, Rendition page) {
		if (!page.part().isEmpty()) {
			Shelf shelf = this.shelves.get(part.key(), (absent) -> new Shelf(competition, part));
			shelf.earlier.remember(page);
			weighAgain(part.key(), shelf);
		}
	}

	/**
	 * Make what is followed most of a competition that moved, so that it is there when
	 * everybody asks for it at once.
	 * @param now where it stands
	 * @param made given each part that changed as soon as it is made, and how it differs
	 * from what was there before
	 */
	void makeAhead(String competition, Moment now, BiConsumer<RenditionKey, Rendition> made) {
		Duration spent = Duration.ZERO;
		for (Part part : followed(competition)) {
			if (spent.compareTo(AHEAD) >= 0) {
				return;
			}
			Instant begun = this.clock.instant();
			Optional<Rendition> step = stepIfPossible(part, competition, now);
			spent = spent.plus(Duration.between(begun, this.clock.instant()));
			step.ifPresent((difference) -> made.accept(part.key(), difference));
		}
	}

	private Optional<Rendition> stepIfPossible(Part part, String competition, Moment now) {
		try {
			return step(part, competition, now);
		}
		catch (RuntimeException ex) {
			log.debug("Could not be made ahead; whoever asks is told why", ex);
			return Optional.empty();
		}
	}

	/** Compress what was made ahead, so that whoever asks does not wait for it. */
	void compressAhead(String competition) {
		followed(competition).forEach((part) -> {
			Shelf shelf = this.shelves.getIfPresent(part.key());
			if (shelf != null) {
				shelf.compress();
			}
		});
	}

	private Optional<Rendition> step(Part part, String competition, Moment now) {
		Shelf shelf = this.shelves.get(part.key(), (absent) -> new Shelf(competition, part));
		String before = shelf.shown();
		Rendition made = make(part.key(), shelf, now, part.maker());
		if (before.isEmpty() || before.equals(made.part())) {
			return Optional.empty();
		}
		Rendition step = shelf.earlier.difference(made, before);
		weighAgain(part.key(), shelf);
		return Optional.of(step);
	}

	private List<Part> followed(String competition) {
		Set<RenditionKey> known = new HashSet<>();
		return this.shelves.policy()
			.eviction()
			.orElseThrow()
			.hottest((entries) -> entries.map((entry) -> entry.getValue().followed(competition))
				.filter(Objects::nonNull)
				.filter((part) -> known.add(part.key()))
				.limit(MOST_AHEAD)
				.toList());
	}

	private Rendition make(RenditionKey key, Shelf ifAbsent, @Nullable Moment now,
			Function<@Nullable Moment, Rendition> maker) {
		Shelf shelf = this.shelves.get(key, (absent) -> ifAbsent);
		try {
			long before = shelf.bytes();
			Rendition rendition = shelf.get(now, maker);
			if (shelf.bytes() != before) {
				weighAgain(key, shelf);
			}
			return rendition;
		}
		catch (RuntimeException ex) {
			// Nothing is there to show, so nothing is kept: addresses that lead nowhere
			// must not fill the memory.
			this.shelves.asMap().remove(key, shelf);
			throw ex;
		}
	}

	private void weighAgain(RenditionKey key, Shelf shelf) {
		this.shelves.asMap().replace(key, shelf, shelf);
	}

	void clear() {
		this.shelves.invalidateAll();
	}

	/** How many bytes are kept. */
	long bytes() {
		return this.shelves.asMap().values().stream().mapToLong(Shelf::bytes).sum();
	}

	private @Nullable Moment moment(@Nullable String competition) {
		return (competition != null) ? this.watch.current(competition) : null;
	}

	/**
	 * The part of a page that is asked for again and again.
	 *
	 * @param key what is asked for
	 * @param maker given the moment that it shall show; needs nobody who asks
	 */
	record Part(RenditionKey key, Function<@Nullable Moment, Rendition> maker) {
	}

	/**
	 * @param until when it must be made again
	 * @param claimed whether somebody is about to make it again
	 */
	private record Held(Rendition rendition, @Nullable Moment moment, Instant until, boolean claimed) {

		boolean shows(@Nullable Moment now) {
			return (this.moment == null) ? now == null : this.moment.equals(now);
		}

	}

	private final class Shelf {

		private final @Nullable String competition;

		private final @Nullable Part part;

		private final AtomicReference<@Nullable Held> held = new AtomicReference<>();

		private final EarlierParts earlier = new EarlierParts();

		Shelf(@Nullable String competition, @Nullable Part part) {
			this.competition = competition;
			this.part = part;
		}

		@Nullable Part followed(String slug) {
			return slug.equals(this.competition) ? this.part : null;
		}

		long bytes() {
			Held there = this.held.get();
			return this.earlier.bytes() + ((there != null) ? there.rendition().size() : 0);
		}

		/** The tag of the part that was shown last, empty for none. */
		String shown() {
			Held there = this.held.get();
			return (there != null) ? there.rendition().part() : this.earlier.newest();
		}

		Optional<Rendition> kept(String since) {
			Held there = this.held.get();
			if (there == null || !there.shows(moment(this.competition)) || claims(there)) {
				return Optional.empty();
			}
			return this.earlier.made(there.rendition(), since);
		}

		Optional<Rendition> atHand(String since) {
			Held there = this.held.get();
			if (there == null || !RenditionCache.this.clock.instant().isBefore(there.until())) {
				return Optional.empty();
			}
			Moment known = (this.competition != null) ? RenditionCache.this.watch.known(this.competition) : null;
			boolean good = (this.competition != null) ? known != null && there.shows(known) : there.shows(null);
			return good ? this.earlier.made(there.rendition(), since) : Optional.empty();
		}

		/** Whoever claims and then fails is followed by another after the same time. */
		private boolean claims(Held there) {
			boolean overdue = !RenditionCache.this.clock.instant().isBefore(there.until());
			return overdue
					&& this.held.compareAndSet(there, new Held(there.rendition(), there.moment(), until(), true));
		}

		synchronized Rendition get(@Nullable Moment now, Function<@Nullable Moment, Rendition> maker) {
			Held there = this.held.get();
			if (there != null && there.shows(now) && !there.claimed()) {
				return there.rendition();
			}
			Rendition made = maker.apply(now);
			Rendition kept = (there != null) ? there.rendition().orSame(made) : made;
			if (there != null && kept == made) {
				this.earlier.remember(there.rendition());
			}
			this.held.set(new Held(kept, now, until(), false));
			return kept;
		}

		void compress() {
			Held there = this.held.get();
			if (there != null) {
				there.rendition().bytes(true);
				this.earlier.compress();
			}
		}

		private Instant until() {
			return RenditionCache.this.clock.instant().plus(RenditionCache.this.settings.keep());
		}

	}

}
