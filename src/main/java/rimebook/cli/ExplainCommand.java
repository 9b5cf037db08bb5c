package rimebook.cli;

import java.util.List;

/** Shows the full working of one entry or of a pair of entries. */
final class ExplainCommand extends FileCommand {

	private static final String USAGE = """
			usage: java -jar rimebook.jar explain --entry A [--against B] --method majority|one-by-one
			           [options] FILE.csv
			       java -jar rimebook.jar explain --entry A [--against B] --method points
			           --elements E.csv --components C.csv [--deductions D.csv] --values V.csv
			           [--segment short|free]
			Shows how the place of an entry was made: every judge, every step, and what parted it
			from its neighbours. With --against: what parts the two entries, and the working of
			both. Files and options are those of 'tabulate', which its --help describes.
			  --entry A      the entry as the file names it
			  --against B    the other entry of the pair
			""";

	@Override
	public String name() {
		return "explain";
	}

	@Override
	public String summary() {
		return "the full working of one entry, or of a pair of entries";
	}

	@Override
	public String usage() {
		return USAGE;
	}

	@Override
	Tabulated answer(List<String> args) {
		return PointsRequest.isMeantBy(args) ? PointsExplanation.of(args) : PlacementExplanation.of(args);
	}

}
