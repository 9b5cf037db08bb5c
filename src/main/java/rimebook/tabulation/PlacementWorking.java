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

}
