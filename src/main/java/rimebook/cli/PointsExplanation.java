package rimebook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

import rimebook.tabulation.TabulationException;
import rimebook.tabulation.points.PointsStanding;
import rimebook.tabulation.points.ScorePair;

/** Explains scores and places of points judging. */
final class PointsExplanation {

	private PointsExplanation() {
	}

	static Tabulated of(Arguments typed) {
		Arguments arguments = PointsRequest.checked(typed, ExplainedEntries.OPTIONS);
		ExplainedEntries asked = ExplainedEntries.of(arguments);
		PointsRequest request = PointsRequest.of(arguments);
		PointsSheets sheets = PointsSheets.read(request.files());
		PointsStanding standing = sheets.standing(request.tieBreak());
		List<String> blocks = new ArrayList<>();
		asked.against().ifPresent((other) -> blocks.add(pair(ScorePair.of(standing, asked.entry(), other))));
		asked.all().forEach((entry) -> blocks.add(working(row(standing, entry))));
		return new Tabulated(String.join("\n", blocks), sheets.notes());
	}

	private static PointsStanding.ScoredEntry row(PointsStanding standing, String entry) {
		return standing.row(entry).orElseThrow(() -> TabulationException.unknownEntry(entry));
	}

	private static String pair(ScorePair pair) {
		return pair.words(UnaryOperator.identity()).english() + "\n\n" + pair.ahead().entry() + " | "
				+ pair.behind().entry() + "\n" + String.join("\n", pair.lines()) + "\n";
	}

	/** The why-sentence of an entry and every step of its score. */
	static String working(PointsStanding.ScoredEntry row) {
		return row.entry() + "\n" + row.why().english() + "\n"
				+ String.join("\n", Objects.requireNonNull(row.score()).working()) + "\n";
	}

}
