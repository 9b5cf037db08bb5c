package rimebook.tabulation;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

import rimebook.wording.Sentence;

/**
 * Two teams of a segment that changed order although no judge changed a mark: teams
 * marked after them moved the ordinals of the one and not of the other.
 *
 * @param newcomers the teams marked in between, by identifier
 * @param before the two as they stood
 * @param after the two as they stand now
 * @param between numbers, from 1, of the judges on whose cards a newcomer came between
 * them; none where both were moved together on every card
 */
public record Flip(List<String> newcomers, PlacePair before, PlacePair after, List<Integer> between) {

	public Flip {
		newcomers = List.copyOf(newcomers);
		between = List.copyOf(between);
	}

	/**
	 * Find the teams that changed order from one standing of a segment to a later one.
	 * @param before the earlier standing
	 * @param after the later one
	 * @return one for each pair that is in another order, or shares a place only now or
	 * no longer
	 * @throws TabulationException {@code uneven-cards} where a team has another number of
	 * ordinals than before
	 */
	public static List<Flip> between(SegmentStanding before, SegmentStanding after) {
		List<String> newcomers = after.rows()
			.stream()
			.filter((row) -> !row.ordinals().isEmpty() && ordinals(before, row.entry()).isEmpty())
			.map(PlacedEntry::entry)
			.sorted(Comparator.naturalOrder())
			.toList();
		return ChangedOrder.of(places(before), places(after))
			.stream()
			.map((pair) -> new Flip(newcomers, PlacePair.of(before, pair.first(), pair.second()),
					PlacePair.of(after, pair.first(), pair.second()), judgesBetween(before, after, pair)))
			.toList();
	}

	private static SortedMap<String, Integer> places(SegmentStanding standing) {
		SortedMap<String, Integer> places = new TreeMap<>();
		standing.rows()
			.stream()
			.filter((row) -> row.place() != null)
			.forEach((row) -> places.put(row.entry(), Objects.requireNonNull(row.place())));
		return places;
	}

	private static List<Integer> ordinals(SegmentStanding standing, String entry) {
		return standing.row(entry).map(PlacedEntry::ordinals).orElse(List.of());
	}

	/** The judges whose ordinals of the two were not moved alike. */
	private static List<Integer> judgesBetween(SegmentStanding before, SegmentStanding after, ChangedOrder pair) {
		List<Integer> first = moves(before, after, pair.first());
		List<Integer> second = moves(before, after, pair.second());
		return IntStream.range(0, first.size())
			.filter((judge) -> !first.get(judge).equals(second.get(judge)))
			.map((judge) -> judge + 1)
			.boxed()
			.toList();
	}

	private static List<Integer> moves(SegmentStanding before, SegmentStanding after, String entry) {
		List<Integer> earlier = ordinals(before, entry);
		List<Integer> later = ordinals(after, entry);
		if (earlier.size() != later.size()) {
			throw TabulationException.unevenCards(entry, later.size(), earlier.size());
		}
		return IntStream.range(0, later.size()).mapToObj((judge) -> later.get(judge) - earlier.get(judge)).toList();
	}

	/**
	 * Return whether the one that was behind is now ahead.
	 * @return {@code false} where the place was shared before or is shared now
	 */
	public boolean isReversal() {
		return !isShared(this.before) && !isShared(this.after);
	}

	private static boolean isShared(PlacePair pair) {
		return Objects.equals(pair.ahead().place(), pair.behind().place());
	}

	/**
	 * Say it in a few sentences.
	 * @param names turns an identifier into the name people know
	 * @return for example "B is now ahead of A: C came between them on the card of judge
	 * 2. Before: A (1st) is ahead of B (2nd): … Now: B (1st) is ahead of A (2nd): …"
	 */
	public Sentence words(UnaryOperator<String> names) {
		String ahead = names.apply(this.after.ahead().entry());
		String behind = names.apply(this.after.behind().entry());
		return Sentence.of(isShared(this.after) ? "why.flip.level" : "why.flip.ahead", ahead, behind,
				Phrases.list(this.newcomers, names), where(), this.before.words(names), this.after.words(names));
	}

	private Sentence where() {
		int newcomers = this.newcomers.size();
		return this.between.isEmpty() ? Sentence.of("why.flip.alike", newcomers)
				: Sentence.of("why.flip.between", newcomers, this.between.size(), this.between);
	}

}
