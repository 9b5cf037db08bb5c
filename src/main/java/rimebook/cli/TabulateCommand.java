package rimebook.cli;

import java.io.PrintStream;
import java.util.List;

import rimebook.tabulation.TabulationException;

/** Makes places from a file of ordinals, marks or segment places. */
final class TabulateCommand implements SubCommand {

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

			Result of an event. The header is entry,place1,place2,... in the order skated; an empty
			place means that the entry did not skate that segment.
			  --factors F1,F2,...            factor of each segment (default 0.5,1.0)
			  --incomplete last|total        order of entries without a place in every segment: by
			                                 the last segment reached (default) or the total so far

			Both:
			  --format csv|text              CSV (default) or a table for people
			""";

	@Override
	public String name() {
		return "tabulate";
	}

	@Override
	public String summary() {
		return "places from a CSV file of ordinals, marks or segment places";
	}

	@Override
	public int run(List<String> args, PrintStream out, PrintStream err) {
		if (args.contains("--help")) {
			out.print(USAGE);
			return CommandLine.DONE;
		}
		try {
			Tabulated tabulated = tabulate(args);
			tabulated.notes().forEach((note) -> err.print("note: " + note + "\n"));
			out.print(tabulated.text());
			return CommandLine.DONE;
		}
		catch (UsageException ex) {
			err.print("rimebook tabulate: " + ex.getMessage() + "\n" + USAGE);
		}
		catch (InputException | TabulationException ex) {
			err.print(ex.getMessage() + "\n");
		}
		return CommandLine.REFUSED;
	}

	private static Tabulated tabulate(List<String> args) {
		boolean combine = args.stream().anyMatch((argument) -> argument.split("=")[0].equals("--combine"));
		return combine ? CombineRequest.of(args).run() : SegmentRequest.of(args).run();
	}

}
