package rimebook.live;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * The moving part of a page as it was shown lately, and how the newest one differs from
 * each of these, made once. What is at hand is told without waiting for what is made.
 */
final class EarlierParts {

	/** Before a refresh everybody has the last one, or the one before. */
	private static final int MOST = 3;

	private final List<Rendition> parts = new CopyOnWriteArrayList<>();

	private final Map<Difference, Rendition> differences = new ConcurrentHashMap<>();

	/**
	 * Know what was shown.
	 * @param shown a moving part; anything else is left alone
	 */
	synchronized void remember(Rendition shown) {
		if (shown.part().isEmpty() || earlier(shown.part()).isPresent()) {
			return;
		}
		this.parts.add(0, shown);
		if (this.parts.size() > MOST) {
			this.parts.remove(MOST);
		}
	}

	/**
	 * What is at hand for whoever has a part of that tag: the whole one where that is not
	 * known, nothing where the difference is still to be made.
	 */
	Optional<Rendition> made(Rendition whole, String since) {
		if (isUnknown(whole, since)) {
			return Optional.of(whole);
		}
		return Optional.ofNullable(this.differences.get(new Difference(whole.part(), since)));
	}

	/** The difference, or the whole part where the earlier one is not known. */
	synchronized Rendition difference(Rendition whole, String since) {
		if (isUnknown(whole, since)) {
			return whole;
		}
		this.differences.keySet().removeIf((known) -> !known.newest().equals(whole.part()));
		return this.differences.computeIfAbsent(new Difference(whole.part(), since),
				(wanted) -> whole.since(earlier(since).orElse(whole)));
	}

	/** The tag of the one that was shown last, empty for none. */
	String newest() {
		return this.parts.stream().findFirst().map(Rendition::part).orElse("");
	}

	long bytes() {
		return this.parts.stream().mapToLong(Rendition::size).sum()
				+ this.differences.values().stream().mapToLong(Rendition::size).sum();
	}

	private boolean isUnknown(Rendition whole, String since) {
		return since.isEmpty() || !(since.equals(whole.part()) || earlier(since).isPresent());
	}

	private Optional<Rendition> earlier(String tag) {
		return this.parts.stream().filter((part) -> part.part().equals(tag)).findFirst();
	}

	private record Difference(String newest, String since) {
	}

}
