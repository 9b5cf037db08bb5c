package rimebook.cli;

import java.util.List;

/** Makes places from a file of ordinals, marks or segment places. */
final class TabulateCommand extends FileCommand {

	private static final String USAGE = """
			usage: java -jar rimebook.jar tabulate --method majority|one-by-one [options] FILE.csv
			       java -jar rimebook.jar tabulate --combine FILE.csv [options]

			Places of a segment. The header of FILE.csv is entry,J1,...,Jn with an ordinal of each
			judge, or entry,J1 first,J1 second,... with the marks of each judge.
			  --method majority|one-by-one   how ordinals become places
			  --segment short|free           with marks: equal totals of one judge go by the first
			                                 mark (short) or by the second (free)
			  --shared-ordinals skip|mean    with marks: level cards get 1,1,3 (skip, the default)
			                                 or 1.5,1.5,3 (mean)
			  --equal-judges both|half|none  one-by-one: who wins a comparison that is even
			                                 (default both)
			  --even-panel refuse|allow      an even number of judges (default refuse)

			Places of a segment under points judging, from several files:
			  --method points --elements E.csv --components C.csv [--deductions D.csv]
			  --values V.csv [--segment short|free] [--detail]
			  E.csv  entry,number,code,J1,...,Jn with the grade of each judge, empty where one gave
			         none; optional: base (in place of the table's base value), worth ("none" where
			         an element earns nothing)
			  C.csv  entry,component,factor,J1,...,Jn with marks
			  D.csv  entry,item,points with the points taken off, positive
			  V.csv  code,base,m5,m4,m3,m2,m1,p1,p2,p3,p4,p5 (or m3 to p3): what codes and grades
			         are worth
			  --segment short|free           equal totals go by the elements (short) or by the
			                                 components (free); without it they share the place
			  --detail                       what every element and component earned, too
			Result of an event. The header is entry,place1,place2,... in the order skated; an empty
			place means that the entry did not skate that segment.
			  --factors F1,F2,...            factor of each segment (default 0.5,1.0)
			  --incomplete last|total        order of entries without a place in every segment: by
			                                 the last segment reached (default) or the total so far

			All:
			  --format csv|text              CSV (default) or a table for people
			""";

	@Override
	public String name() {
		return "tabulate";
	}

	@Override
	public String summary() {
		return "places from CSV files of ordinals, marks, grades or segment places";
	}

	@Override
	public String usage() {
		return USAGE;
	}

	@Override
	Tabulated answer(List<String> args) {
		if (PointsRequest.isMeantBy(args)) {
			return PointsRequest.of(args).run();
		}
		boolean combine = args.stream().anyMatch((argument) -> argument.split("=")[0].equals("--combine"));
		return combine ? CombineRequest.of(args).run() : SegmentRequest.of(args).run();
	}

}
