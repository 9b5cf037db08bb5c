package rimebook.cli;

import picocli.CommandLine.Model.CommandSpec;

/** Shows the full working of one entry or of a pair of entries. */
final class ExplainCommand extends FileCommand {

	private static final String SYNOPSIS = """
			java -jar rimebook.jar explain --entry A [--against B] --method majority|one-by-one
			           [options] FILE.csv
			       java -jar rimebook.jar explain --entry A [--against B] --method points
			           --elements E.csv --components C.csv [--deductions D.csv] --values V.csv
			           [--segment short|free]
			""";

	private static final String DESCRIPTION = """
			Shows how the place of an entry was made: every judge, every step, and what parted it
			from its neighbours. With --against: what parts the two entries, and the working of
			both. Files are those of 'tabulate', which its --help describes.
			""";

	@Override
	public String name() {
		return "explain";
	}

	@Override
	public CommandSpec spec() {
		return Options.command(name(), SYNOPSIS, "the full working of one entry, or of a pair of entries", DESCRIPTION)
			.addArgGroup(Options.group("What is explained:",
					Options.value(ExplainedEntries.ENTRY, "A", "the entry as the file names it"),
					Options.value(ExplainedEntries.AGAINST, "B", "the other entry of the pair")))
			.addArgGroup(Options.placement())
			.addArgGroup(Options.points())
			.addArgGroup(Options.group("All:", Options.help()));
	}

	@Override
	Tabulated answer(Arguments typed) {
		return PointsRequest.isMeantBy(typed) ? PointsExplanation.of(typed) : PlacementExplanation.of(typed);
	}

}
