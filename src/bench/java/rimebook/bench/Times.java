package rimebook.bench;

import java.util.Collection;
import java.util.List;

/** How measured times are said. */
final class Times {

	private Times() {
	}

	/** Print the middle, the hundredth longest and the longest of them; nothing of none. */
	static void print(String what, Collection<Long> nanos) {
		List<Long> sorted = nanos.stream().sorted().toList();
		if (!sorted.isEmpty()) {
			System.out.printf("  %-28s n %7d   p50 %7.1f ms   p99 %7.1f ms   most %7.1f ms%n", what, sorted.size(),
					sorted.get(sorted.size() / 2) / 1e6, sorted.get(sorted.size() * 99 / 100) / 1e6,
					sorted.get(sorted.size() - 1) / 1e6);
		}
	}

}
