package rimebook.tabulation;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Every team against every other: for each pair the judges in favour and the win.
 */
public final class OneByOneTable {

	private final EqualJudgesInFavour policy;

	private final TreeMap<String, List<Integer>> ordinals;

	private OneByOneTable(EqualJudgesInFavour policy, Map<String, List<Integer>> ordinals) {
		this.policy = policy;
		this.ordinals = new TreeMap<>(ordinals);
	}

	static OneByOneTable of(PlacementRules rules, Map<String, List<Integer>> ordinals) {
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
		return List.copyOf(this.ordinals.keySet());
	}

	/**
	 * Return one cell.
	 * @param entry the team whose judges are counted
	 * @param rival the team it is compared with
	 * @return judges in favour of {@code entry} and what it wins
	 * @throws java.util.NoSuchElementException if either is not in the table
	 */
	public Cell cell(String entry, String rival) {
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

	private int judgesInFavour(String entry, String rival) {
		List<Integer> own = ordinalsOf(entry);
		List<Integer> theirs = ordinalsOf(rival);
		int count = 0;
		for (int judge = 0; judge < own.size(); judge++) {
			count += (own.get(judge) <= theirs.get(judge)) ? 1 : 0;
		}
		return count;
	}

	private List<Integer> ordinalsOf(String entry) {
		List<Integer> found = this.ordinals.get(entry);
		if (found == null) {
			throw new java.util.NoSuchElementException("No entry '" + entry + "' in the table");
		}
		return found;
	}

	OneByOneFigures figures(String entry) {
		int wins = 0;
		int judgesInFavour = 0;
		for (String rival : this.ordinals.keySet()) {
			if (!rival.equals(entry)) {
				Cell cell = cell(entry, rival);
				wins += cell.win();
				judgesInFavour += cell.judgesInFavour();
			}
		}
		return new OneByOneFigures(wins, judgesInFavour);
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
