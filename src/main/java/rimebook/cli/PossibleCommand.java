package rimebook.cli;

import java.util.Set;

import picocli.CommandLine.Model.CommandSpec;

import rimebook.tabulation.points.PointsNeeded;
import rimebook.tabulation.points.SegmentRules;

/** Tells which places can still be reached in a segment with rows not yet filled. */
final class PossibleCommand extends FileCommand {

	private static final String SYNOPSIS = """
			java -jar rimebook.jar possible --method majority|one-by-one [options] FILE.csv
			       java -jar rimebook.jar possible --method points --elements E.csv
			           --components C.csv [--deductions D.csv] --values V.csv [--segment short|free]
			""";

	private static final String DESCRIPTION = """
			Which places every entry can still reach. FILE.csv is that of 'tabulate'; an entry still
			to skate has nothing in the columns of the judges, and ordinals rank the entries marked
			so far. A figure marked as a bound cannot be exceeded, but perhaps not be reached either.
			Under points judging: which total each place takes for an entry still to skate, against
			those in the files.
			""";

	@Override
	public String name() {
		return "possible";
	}

	@Override
	public CommandSpec spec() {
		return Options
			.command(name(), SYNOPSIS, "places still possible, from a CSV file with rows not yet filled", DESCRIPTION)
			.addArgGroup(Options.placement())
			.addArgGroup(Options.group("The event, where FILE.csv is its last segment:",
					Options.value(PossibleRequest.EARLIER, "PLACES.csv",
							"places in the segments before: entry,place1,... with a column for each factor but the "
									+ "last; then places in the event are told too, and what every entry still to "
									+ "skate needs for them"),
					Options.factors(), Options.incomplete(),
					Options.value(PossibleRequest.NEEDS, "N",
							"tell what is needed for the first N places (default 3)")))
			.addArgGroup(Options.points())
			.addArgGroup(Options.group("All:", Options.format(), Options.help()));
	}

	@Override
	Tabulated answer(Arguments typed) {
		return PointsRequest.isMeantBy(typed) ? needed(typed) : PossibleRequest.of(typed).run();
	}

	private static Tabulated needed(Arguments typed) {
		PointsRequest request = PointsRequest.of(PointsRequest.checked(typed, Set.of(OutputFormat.OPTION)));
		PointsSheets sheets = PointsSheets.read(request.files());
		SegmentRules.TieBreak tieBreak = request.tieBreak();
		return new Tabulated(
				request.format().write(PossibleTables.needed(PointsNeeded.inSegment(sheets.standing(tieBreak)))),
				sheets.notes());
	}

}
