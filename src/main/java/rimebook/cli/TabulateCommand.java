package rimebook.cli;

import java.util.Set;

import picocli.CommandLine.Model.CommandSpec;

/** Makes places from a file of ordinals, marks or segment places. */
final class TabulateCommand extends FileCommand {

	private static final String SYNOPSIS = """
			java -jar rimebook.jar tabulate --method majority|one-by-one [options] FILE.csv
			       java -jar rimebook.jar tabulate --method points --elements E.csv --components C.csv
			           [--deductions D.csv] --values V.csv [--segment short|free] [--detail]
			       java -jar rimebook.jar tabulate --combine FILE.csv [options]
			""";

	private static final String DESCRIPTION = """
			Places of a segment: the header of FILE.csv is entry,J1,...,Jn with an ordinal of each
			judge, or entry,J1 first,J1 second,... with the marks of each judge.
			Result of an event: the header is entry,place1,place2,... in the order skated; an empty
			place means that the entry did not skate that segment.
			""";

	@Override
	public String name() {
		return "tabulate";
	}

	@Override
	public CommandSpec spec() {
		return Options
			.command(name(), SYNOPSIS, "places from CSV files of ordinals, marks, grades or segment places",
					DESCRIPTION)
			.addArgGroup(Options.placement())
			.addArgGroup(
					Options.points(Options.flag(PointsRequest.DETAIL, "what every element and component earned, too")))
			.addArgGroup(Options.group("Result of an event:",
					Options.value(CombineRequest.COMBINE, "FILE.csv", "places in each segment"), Options.factors(),
					Options.incomplete()))
			.addArgGroup(Options.group("All:", Options.format(), Options.help()));
	}

	@Override
	Tabulated answer(Arguments typed) {
		if (PointsRequest.isMeantBy(typed)) {
			return PointsRequest.of(PointsRequest.checked(typed, Set.of(OutputFormat.OPTION, PointsRequest.DETAIL)))
				.run();
		}
		return typed.has(CombineRequest.COMBINE) ? CombineRequest.of(typed).run()
				: SegmentRequest.of(SegmentRequest.checked(typed, Set.of(OutputFormat.OPTION))).run();
	}

}
