package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;

/** Shows how the figures of a team were made, judge by judge and step by step. */
public final class PlacementWorking {

	private PlacementWorking() {
	}

	/**
	 * Show the working of one team.
	 * @param rules the rules the standing was made with
	 * @param standing of the segment
	 * @param entry identifier
	 * @return one line for each judge and each step; none for a team without ordinals
	 * @throws TabulationException {@code entry-unknown}
	 */
	public static List<String> of(PlacementRules rules, SegmentStanding standing, String entry) {
		PlacedEntry row = standing.row(entry).orElseThrow(() -> TabulationException.unknownEntry(entry));
		List<String> lines = new ArrayList<>();
		for (int judge = 0; judge < row.ordinals().size(); judge++) {
			lines.add("Judge " + (judge + 1) + ": " + card(row, judge) + "ordinal "
					+ Hundredths.plain(row.ordinals().get(judge)));
		}
		if (row.figures() instanceof Figures.MajorityFigures figures) {
			lines.addAll(new MajorityWorking(figures, row.ordinals()).lines());
		}
		if (row.figures() instanceof Figures.OneByOneFigures figures) {
			lines.addAll(new OneByOneWorking(figures, OneByOneTable.of(rules, standing)).lines(entry));
		}
		return lines;
	}

	private static String card(PlacedEntry row, int judge) {
		if (row.cards().isEmpty()) {
			return "";
		}
		CardMarks card = row.cards().get(judge);
		return Hundredths.decimal(card.first()) + " and " + Hundredths.decimal(card.second()) + ", together "
				+ Hundredths.decimal(card.total()) + ", ";
	}

	/** The way through the columns "1st", "2nd or better", … until a majority appears. */
	private record MajorityWorking(Figures.MajorityFigures figures, List<Integer> ordinals) {

		List<String> lines() {
			List<Integer> ascending = this.ordinals.stream().sorted().toList();
			List<String> lines = new ArrayList<>();
			lines.add("A majority is " + Phrases.number(ascending.size() / 2 + 1) + " of "
					+ Phrases.judges(ascending.size()));
			ascending.stream()
				.distinct()
				.filter((ordinal) -> ordinal <= this.figures.majorityPlace())
				.forEach((ordinal) -> lines.add(column(ordinal)));
			lines.add("Total of those ordinals: " + sum(ascending.subList(0, this.figures.size())));
			lines.add("Total of all ordinals: " + sum(ascending));
			return lines;
		}

		private String column(int place) {
			int judges = (int) this.ordinals.stream().filter((ordinal) -> ordinal <= place).count();
			return Phrases.orBetter(place) + ": " + Phrases.judges(judges) + ", "
					+ ((place == this.figures.majorityPlace()) ? "a majority" : "no majority");
		}

		private static String sum(List<Integer> ordinals) {
			String terms = String.join(" + ", ordinals.stream().map(Hundredths::plain).toList());
			int sum = ordinals.stream().mapToInt(Integer::intValue).sum();
			return (ordinals.size() == 1) ? terms : terms + " = " + Hundredths.plain(sum);
		}

	}

	/** One team against each other one. */
	private record OneByOneWorking(Figures.OneByOneFigures figures, OneByOneTable table) {

		List<String> lines(String entry) {
			List<String> lines = new ArrayList<>();
			this.table.entries()
				.stream()
				.filter((rival) -> !rival.equals(entry))
				.forEach((rival) -> lines.add(comparison(entry, rival)));
			lines.add("Comparisons won: " + Hundredths.plain(this.figures.wins()));
			lines.add("Judges in favour: " + this.figures.judgesInFavour());
			return lines;
		}

		private String comparison(String entry, String rival) {
			OneByOneTable.Cell own = this.table.cell(entry, rival);
			OneByOneTable.Cell theirs = this.table.cell(rival, entry);
			return "Against " + rival + ": " + own.judgesInFavour() + " in favour, " + theirs.judgesInFavour()
					+ " for the other, " + outcome(own, theirs);
		}

		private static String outcome(OneByOneTable.Cell own, OneByOneTable.Cell theirs) {
			if (own.judgesInFavour() == theirs.judgesInFavour()) {
				return "even, counts " + Hundredths.plain(own.win());
			}
			return (own.win() > theirs.win()) ? "won" : "lost";
		}

	}

}
