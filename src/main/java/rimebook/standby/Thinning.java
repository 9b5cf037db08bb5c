package rimebook.standby;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which copies are kept: all of the last ten minutes, then the newest of each ten
 * minutes, after three hours that of each hour, after two days that of each day. The
 * newest is always kept. A copy dated in the future counts as new: clocks differ.
 */
final class Thinning {

	private static final Duration ALL = Duration.ofMinutes(10);

	private static final Duration BY_TEN_MINUTES = Duration.ofHours(3);

	private static final Duration BY_HOUR = Duration.ofDays(2);

	private Thinning() {
	}

	static Set<Instant> kept(Collection<Instant> copies, Instant now) {
		Set<Instant> kept = new HashSet<>();
		Set<List<Long>> spans = new HashSet<>();
		copies.stream().sorted(Comparator.reverseOrder()).forEach((copy) -> {
			long span = span(Duration.between(copy, now));
			if (kept.isEmpty() || span == 0 || spans.add(List.of(span, copy.getEpochSecond() / span))) {
				kept.add(copy);
			}
		});
		return kept;
	}

	/** One is kept of so many seconds; 0 for all. */
	private static long span(Duration age) {
		if (age.compareTo(ALL) <= 0) {
			return 0;
		}
		if (age.compareTo(BY_TEN_MINUTES) <= 0) {
			return ALL.toSeconds();
		}
		return age.compareTo(BY_HOUR) <= 0 ? Duration.ofHours(1).toSeconds() : Duration.ofDays(1).toSeconds();
	}

}
