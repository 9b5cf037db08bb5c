package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The award procedure accountants follow on paper, written without the sorting key: walk
 * through the columns, and whenever teams have a majority, give places to the greatest
 * majorities first.
 */
final class HandProcedure {

	private final List<PlacedEntry> waiting;

	private final List<String> places = new ArrayList<>();

	private int place = 1;

	private HandProcedure(List<PlacedEntry> waiting) {
		this.waiting = new ArrayList<>(waiting);
	}

	/** Return the lines "place entry" for the ordinals in a standing. */
	static List<String> places(SegmentStanding standing) {
		HandProcedure procedure = new HandProcedure(
				standing.rows().stream().filter((row) -> !row.ordinals().isEmpty()).toList());
		int need = standing.judges() / 2 + 1;
		// Half columns, since ordinals may be means of two places.
		for (int column = 100; !procedure.waiting.isEmpty(); column += 50) {
			procedure.awardColumn(column, need);
		}
		return procedure.places;
	}

	private void awardColumn(int column, int need) {
		List<PlacedEntry> candidates = new ArrayList<>(
				this.waiting.stream().filter((row) -> count(row, column) >= need).toList());
		while (!candidates.isEmpty()) {
			List<PlacedEntry> best = lowest(candidates, (row) -> -count(row, column));
			best = lowest(best, (row) -> sum(row, column));
			best = lowest(best, (row) -> sum(row, Integer.MAX_VALUE));
			best.stream()
				.sorted(Comparator.comparing(PlacedEntry::entry))
				.forEach((row) -> this.places.add(this.place + " " + row.entry()));
			this.place += best.size();
			candidates.removeAll(best);
			this.waiting.removeAll(best);
		}
	}

	private static List<PlacedEntry> lowest(List<PlacedEntry> rows,
			java.util.function.ToIntFunction<PlacedEntry> figure) {
		int lowest = rows.stream().mapToInt(figure).min().orElseThrow();
		return rows.stream().filter((row) -> figure.applyAsInt(row) == lowest).toList();
	}

	private static int count(PlacedEntry row, int column) {
		return (int) row.ordinals().stream().filter((ordinal) -> ordinal <= column).count();
	}

	private static int sum(PlacedEntry row, int column) {
		return row.ordinals().stream().filter((ordinal) -> ordinal <= column).mapToInt(Integer::intValue).sum();
	}

}
