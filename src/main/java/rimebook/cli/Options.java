package rimebook.cli;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The options of the commands as their help shows them and a shell completes them. They
 * are put together by hand, not from annotations, which would have to be read at every
 * start.
 */
final class Options {

	private Options() {
	}

	/**
	 * A command that still lacks its options.
	 * @param synopsis how it is called, a line each
	 * @param summary what it does, in one line
	 * @param description what else there is to say
	 */
	static CommandSpec command(String name, String synopsis, String summary, String description) {
		CommandSpec command = CommandSpec.create().name(name);
		command.usageMessage()
			.synopsisHeading("usage: ")
			.customSynopsis(synopsis.strip().split("\n"))
			.description((summary + "\n\n" + description.strip()).split("\n"))
			.descriptionHeading("%n")
			.sortOptions(false)
			.width(96);
		command.addPositional(PositionalParamSpec.builder()
			.arity("0..*")
			.type(List.class)
			.auxiliaryTypes(String.class)
			.hidden(true)
			.build());
		return command;
	}

	/** What stands in the help together, below a heading. */
	static ArgGroupSpec group(String heading, OptionSpec... options) {
		ArgGroupSpec.Builder group = ArgGroupSpec.builder().validate(false).multiplicity("0..1");
		group.heading("%n" + heading + "%n");
		for (OptionSpec option : options) {
			group.addArg(option);
		}
		return group.build();
	}

	/** An option with any value. */
	static OptionSpec value(String name, String label, String... description) {
		return OptionSpec.builder(name).type(String.class).paramLabel(label).description(description).build();
	}

	/** An option with one of a few words. */
	static OptionSpec choice(String name, List<String> words, String... description) {
		return OptionSpec.builder(name)
			.type(String.class)
			.paramLabel(String.join("|", words))
			.completionCandidates(words)
			.description(description)
			.build();
	}

	/** An option without a value. */
	static OptionSpec flag(String name, String... description) {
		return OptionSpec.builder(name).type(boolean.class).arity("0").description(description).build();
	}

	static OptionSpec help() {
		return OptionSpec.builder("-h", "--help")
			.type(boolean.class)
			.arity("0")
			.usageHelp(true)
			.description("tells this")
			.build();
	}

	static OptionSpec format() {
		return choice(OutputFormat.OPTION, List.of("csv", "text"), "CSV (default) or a table for people");
	}

	static OptionSpec factors() {
		return value(CombineRequest.FACTORS, "F1,F2,...", "factor of each segment (default 0.5,1.0)");
	}

	static OptionSpec incomplete() {
		return choice(CombineRequest.INCOMPLETE, List.of("last", "total"),
				"order of entries without a place in every segment: by the last segment reached (default) or the "
						+ "total so far");
	}

	/** How places are made of ordinals or marks. */
	static ArgGroupSpec placement() {
		return group("Placement judging:",
				choice(SegmentRequest.METHOD, List.of("majority", "one-by-one", "points"),
						"how ordinals become places; points: see below"),
				choice(SegmentRequest.SEGMENT, List.of("short", "free"),
						"with marks: equal totals of one judge go by the first mark (short) or by the second (free)",
						"under points judging: equal totals go by the elements (short) or by the components (free); "
								+ "without it they share the place"),
				choice(SegmentRequest.SHARED_ORDINALS, List.of("skip", "mean"),
						"with marks: level cards get 1,1,3 (skip, the default) or 1.5,1.5,3 (mean)"),
				choice(SegmentRequest.EQUAL_JUDGES, List.of("both", "half", "none"),
						"one-by-one: who wins a comparison that is even (default both)"),
				choice(SegmentRequest.EVEN_PANEL, List.of("refuse", "allow"),
						"an even number of judges (default refuse)"));
	}

	/**
	 * The files of points judging.
	 * @param more what goes with them
	 */
	static ArgGroupSpec points(OptionSpec... more) {
		OptionSpec[] files = {
				value(PointsFiles.ELEMENTS, "E.csv",
						"entry,number,code,J1,...,Jn with the grade of each judge, empty where one gave none",
						"optional: base (in place of the table's base value), worth (\"none\" where an element earns "
								+ "nothing)"),
				value(PointsFiles.COMPONENTS, "C.csv", "entry,component,factor,J1,...,Jn with marks"),
				value(PointsFiles.DEDUCTIONS, "D.csv", "entry,item,points with the points taken off, positive"),
				value(PointsFiles.VALUES, "V.csv",
						"code,base,m5,m4,m3,m2,m1,p1,p2,p3,p4,p5 (or m3 to p3): what codes and grades are worth") };
		OptionSpec[] all = Stream.concat(Arrays.stream(files), Arrays.stream(more)).toArray(OptionSpec[]::new);
		return group("Points judging (--method points), from several files:", all);
	}

}
