package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;

/** One team against each other one. */
record OneByOneWorking(Figures.OneByOneFigures figures, OneByOneTable table) {

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
