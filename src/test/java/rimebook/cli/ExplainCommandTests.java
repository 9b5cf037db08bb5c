package rimebook.cli;

import java.util.Arrays;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class ExplainCommandTests {

	@ParameterizedTest
	@CsvSource({ "explain.majority.txt, --entry C --method majority ordinals.csv",
			"explain.majority-pair.txt, --method majority --entry C --against B ordinals.csv",
			"explain.one-by-one.txt, --method one-by-one ordinals.csv --entry=B",
			"explain.one-by-one-pair.txt, --method one-by-one ordinals.csv --entry C --against B" })
	void placementIsExplained(String expected, String line) {
		CliRun run = CliRun.of(args(line));
		assertThat(run).isEqualTo(new CliRun(0, CliRun.content(expected), ""));
	}

	@Test
	void marksAreShownWhereThereAreAny() {
		CliRun run = CliRun.of(args("--method majority --segment free --entry Glacier marks.csv"));
		assertThat(run.err()).startsWith("note: ").endsWith("not used: columns 'start', 'club'\n");
		assertThat(run.out()).isEqualTo(CliRun.content("explain.marks.txt"));
	}

	@Test
	void evenComparisonsSayWhatTheyCount() {
		String[] args = args("--method one-by-one --equal-judges half --even-panel allow --entry A even.csv");
		assertThat(CliRun.of(args).out()).contains("\nAgainst B: 1 in favour, 1 for the other, even, counts 0.5\n",
				"\nComparisons won: 0.5\n",
				"\nA and B share 1st: comparisons won: both 0.5; judges in favour: both 1.\n");
	}

	@Test
	void pointsAreExplained() {
		assertThat(PointsFixtureFiles.run("explain", "--segment", "short", "--entry", "Ice, Snow"))
			.isEqualTo(new CliRun(0, CliRun.content("explain.points.txt"), ""));
		assertThat(PointsFixtureFiles.run("explain", "--segment", "short", "--entry", "Ice, Snow", "--against",
				"Harbour Lights"))
			.isEqualTo(new CliRun(0, CliRun.content("explain.points-pair.txt"), ""));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '^',
			textBlock = """
					--method majority ordinals.csv                       | option '--entry' is missing
					--entry A ordinals.csv                               | option '--method' is missing
					--method majority --entry A                          | expected one file; got 0
					--method majority --format csv --entry A x.csv       | there is no option '--format'
					--method points --entry A                            | option '--elements' is missing beside '--method points'
					--method points --detail --entry A                   | there is no option '--detail' beside '--method points'
					""")
	void badArgumentsAreRefusedWithTheUsage(String line, String refusal) {
		CliRun run = CliRun.of(args(line));
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.out()).isEmpty();
		assertThat(run.err()).startsWith("rimebook explain: " + refusal + "\nusage: java -jar rimebook.jar explain ");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '^',
			textBlock = """
					--entry Z             | There is no entry 'Z' in the standing.
					--entry A --against Z | There is no entry 'Z' in the standing.
					--entry A --against A | Entry 'A' has nothing to be compared with; two different teams with a place are expected.
					""")
	void entriesMustBeThere(String options, String refusal) {
		assertThat(CliRun.of(args("--method majority ordinals.csv " + options)))
			.isEqualTo(new CliRun(2, "", refusal + "\n"));
		assertThat(PointsFixtureFiles.run("explain", options.replace(" A", " Glacier").split(" ")))
			.isEqualTo(new CliRun(2, "", refusal.replace("'A'", "'Glacier'") + "\n"));
	}

	@Test
	void helpTellsEveryOption() {
		CliRun run = CliRun.of("explain", "--help");
		assertThat(run.status()).isZero();
		assertThat(run.err()).isEmpty();
		assertThat(run.out()).contains("--entry A", "--against B", "--method majority|one-by-one", "--method points");
	}

	/** Split a line at its spaces and lead the names of files to the test resources. */
	private static String[] args(String line) {
		return Stream
			.concat(Stream.of("explain"),
					Arrays.stream(line.split(" ")).map((word) -> word.endsWith(".csv") ? CliRun.file(word) : word))
			.toArray(String[]::new);
	}

}
