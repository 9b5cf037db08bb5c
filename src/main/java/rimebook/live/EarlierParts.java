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

	private final List<PartPrint> parts = new CopyOnWriteArrayList<>();

	private final Map<Difference, Rendition> differences = new ConcurrentHashMap<>();

	/**
	 * Know what was shown.
	 * @param shown a moving part, or a page with one; anything else is left alone
	 */
	synchronized void remember(Rendition shown) {
		shown.print().filter((print) -> earlier(print.tag()).isEmpty()).ifPresent((print) -> this.parts.add(0, print));
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
				(wanted) -> earlier(since).or(whole::print).map(whole::since).orElse(whole));
	}

	/** The tag of the one that was shown last, empty for none. */
	String newest() {
		return this.parts.stream().findFirst().map(PartPrint::tag).orElse("");
	}

	/** Compress the differences that are made. */
	void compress() {
		this.differences.values().forEach((difference) -> difference.bytes(true));
	}

	long bytes() {
		return this.parts.stream().mapToLong(PartPrint::size).sum()
				+ this.differences.values().stream().mapToLong(Rendition::size).sum();
	}

	private boolean isUnknown(Rendition whole, String since) {
		return since.isEmpty() || !(since.equals(whole.part()) || earlier(since).isPresent());
	}

	private Optional<PartPrint> earlier(String tag) {
		return this.parts.stream().filter((part) -> part.tag().equals(tag)).findFirst();
	}

	private record Difference(String newest, String since) {
	}

}
