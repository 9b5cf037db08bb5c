package rimebook.tabulation;

import java.util.Collections;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Every team against every other: for each pair the judges in favour and the win.
 */
public final class OneByOneTable {

	private final PlacementRules.EqualJudgesInFavour policy;

	private final List<String> entries;

	/** By entry, then by judge. */
	private final int[][] ordinals;

	private OneByOneTable(PlacementRules.EqualJudgesInFavour policy, SortedMap<String, List<Integer>> ordinals) {
		this.policy = policy;
		this.entries = List.copyOf(ordinals.keySet());
		this.ordinals = ordinals.values()
			.stream()
			.map((own) -> own.stream().mapToInt(Integer::intValue).toArray())
			.toArray(int[][]::new);
	}

	static OneByOneTable of(PlacementRules rules, SortedMap<String, List<Integer>> ordinals) {
		return new OneByOneTable(rules.equalJudgesInFavour(), ordinals);
	}

	/**
	 * Return the table behind a standing.
	 * @param rules the rules the standing was made with
	 * @param standing a standing of a segment, of either method
	 * @return the table of all teams with ordinals
	 */
	public static OneByOneTable of(PlacementRules rules, SegmentStanding standing) {
		TreeMap<String, List<Integer>> ordinals = new TreeMap<>();
		standing.rows()
			.stream()
			.filter((row) -> !row.ordinals().isEmpty())
			.forEach((row) -> ordinals.put(row.entry(), row.ordinals()));
		return of(rules, ordinals);
	}

	/**
	 * Return the teams compared.
	 * @return identifiers in ascending order
	 */
	public List<String> entries() {
		return this.entries;
	}

	/**
	 * Return one cell.
	 * @param entry the team whose judges are counted
	 * @param rival the team it is compared with
	 * @return judges in favour of {@code entry} and what it wins
	 * @throws NoSuchElementException if either is not in the table
	 */
	public Cell cell(String entry, String rival) {
		return cell(index(entry), index(rival));
	}

	private int index(String entry) {
		int index = Collections.binarySearch(this.entries, entry);
		if (index < 0) {
			throw new NoSuchElementException("No entry '" + entry + "' in the table");
		}
		return index;
	}

	private Cell cell(int entry, int rival) {
		int own = judgesInFavour(entry, rival);
		int theirs = judgesInFavour(rival, entry);
		return new Cell(win(own, theirs), own);
	}

	private int win(int own, int theirs) {
		if (own == theirs) {
			return this.policy.credit();
		}
		return (own > theirs) ? Hundredths.ONE : 0;
	}

	private int judgesInFavour(int entry, int rival) {
		int[] own = this.ordinals[entry];
		int[] theirs = this.ordinals[rival];
		int count = 0;
		for (int judge = 0; judge < own.length; judge++) {
			count += (own[judge] <= theirs[judge]) ? 1 : 0;
		}
		return count;
	}

	Figures.OneByOneFigures figures(String entry) {
		int own = index(entry);
		int wins = 0;
		int judgesInFavour = 0;
		for (int rival = 0; rival < this.entries.size(); rival++) {
			if (rival != own) {
				Cell cell = cell(own, rival);
				wins += cell.win();
				judgesInFavour += cell.judgesInFavour();
			}
		}
		return new Figures.OneByOneFigures(wins, judgesInFavour);
	}

	/**
	 * One team against one other.
	 *
	 * @param win 100 for a win, 0 for none, 50 for half
	 * @param judgesInFavour judges that have the team at least level; a judge with both
	 * level counts for both
	 */
	public record Cell(int win, int judgesInFavour) {

	}

}
