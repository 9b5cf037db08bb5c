package rimebook.cli;

import java.util.List;
import java.util.Set;

import rimebook.tabulation.points.PointsNeeded;
import rimebook.tabulation.points.TieBreak;

/** Tells which places can still be reached in a segment with rows not yet filled. */
final class PossibleCommand extends FileCommand {

	private static final String USAGE = """
			usage: java -jar rimebook.jar possible --method majority|one-by-one [options] FILE.csv
			       java -jar rimebook.jar possible --method points --elements E.csv
			           --components C.csv [--deductions D.csv] --values V.csv [--segment short|free]

			Which places every entry can still reach. FILE.csv is that of 'tabulate'; an entry still
			to skate has nothing in the columns of the judges, and ordinals rank the entries marked
			so far. Options are those of 'tabulate', which its --help describes, and
			  --earlier PLACES.csv   places in the segments before, where FILE.csv is the last one
			                         of the event: entry,place1,... with a column for each factor
			                         but the last; then places in the event are told too, and what
			                         every entry still to skate needs for them
			  --factors F1,F2,...    with --earlier: factor of each segment (default 0.5,1.0)
			  --incomplete last|total
			  --needs N              with --earlier: tell what is needed for the first N places
			                         (default 3)
			A figure marked as a bound cannot be exceeded, but perhaps not be reached either.

			Under points judging: which total each place takes for an entry still to skate, against
			those in the files.

			Both:
			  --format csv|text      CSV (default) or a table for people
			""";

	@Override
	public String name() {
		return "possible";
	}

	@Override
	public String summary() {
		return "places still possible, from a CSV file with rows not yet filled";
	}

	@Override
	public String usage() {
		return USAGE;
	}

	@Override
	Tabulated answer(List<String> args) {
		return PointsRequest.isMeantBy(args) ? needed(args) : PossibleRequest.of(args).run();
	}

	private static Tabulated needed(List<String> args) {
		PointsRequest request = PointsRequest.of(PointsRequest.arguments(args, Set.of(OutputFormat.OPTION), Set.of()));
		PointsSheets sheets = PointsSheets.read(request.files());
		TieBreak tieBreak = request.tieBreak();
		return new Tabulated(
				request.format().write(PossibleTables.needed(PointsNeeded.inSegment(sheets.standing(tieBreak)))),
				sheets.notes());
	}

}
