package rimebook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class PossibleCommandTests {

	@TempDir
	private Path folder;

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			possible.event.csv   | --method majority possible-free.csv --earlier possible-short.csv
			possible.event.txt   | --method majority possible-free.csv --earlier possible-short.csv --format text
			possible.segment.csv | --method one-by-one possible-free.csv
			""")
	void wholeOutputIsTheOneExpected(String expected, String line) {
		assertThat(CliRun.of(args(line))).isEqualTo(new CliRun(0, CliRun.content(expected), ""));
	}

	@Test
	void needsAreToldForAsManyPlacesAsAsked() {
		String line = "--method majority possible-free.csv --earlier possible-short.csv --needs ";
		assertThat(CliRun.of(args(line + "0")).out()).doesNotContain("Pine,1,1");
		assertThat(CliRun.of(args(line + "1")).out()).contains("Pine,1,1").doesNotContain("Pine,2,");
		assertThat(CliRun.of(args(line + "9")).out())
			.contains("Pine,4,4,4,exact,Pine is certain of 4th place or better in the event.");
	}

	@Test
	void factorsAndOrderOfIncompleteEntriesCount() {
		CliRun run = possible("entry,J1\nA,1\nB,2\nC,\n", "--earlier", file("entry,place1\nA,3\nB,1\nC,2\n"),
				"--factors", "1.0,0.5");
		assertThat(run.out()).contains("\nB,event,1,2,exact,", "\nA,event,2,3,exact,");
		assertThat(possible("entry,J1\nA,1\nB,2\nC,\n", "--earlier", file("entry,place1\nA,\nB,\nC,1\n"),
				"--incomplete", "total")
			.out()).contains("\nC,event,1,1,exact,C is certain of 1st place in the event.");
	}

	@Test
	void marksLeaveOnlyPositionsForWhichThereIsACard() {
		CliRun run = possible("entry,J1 first,J1 second\nA,6.0,6.0\nB,,\n", "--segment", "free");
		assertThat(run.out()).contains("A,segment,1,1,exact,", "B,segment,1,2,exact,");
	}

	@Test
	void boundsAreMarked() {
		CliRun run = possible("entry,J1,J2,J3\nA,1,3,4\nB,2,1,3\nC,3,4,1\nD,4,2,2\nE,,,\nF,,,\n", "--earlier",
				file("entry,place1\nA,1\nB,2\nC,3\nD,4\nE,5\nF,6\n"));
		assertThat(run.out()).contains(",bounds,", " is a bound,", "will be no worse than");
	}

	@Test
	void pointsTellWhatEachPlaceTakes() {
		CliRun run = PointsFixtureFiles.run("possible", "--segment", "short");
		assertThat(run.err()).isEmpty();
		assertThat(run.out()).startsWith("place,total,why\n1,").contains(",\"1st needs ", " for the elements.\"\n");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|',
			textBlock = """
					--method majority                                   | expected one file; got 0
					possible-free.csv                                   | option '--method' is missing
					--method majority possible-free.csv --factors 1,1   | option '--factors' does not go with a segment by itself
					--method majority possible-free.csv --needs 2       | option '--needs' does not go with a segment by itself
					--method majority possible-free.csv --earlier possible-short.csv --needs x | option '--needs' is 'x'
					--method points --detail                            | there is no option '--detail' beside '--method points'
					""")
	void badArgumentsAreRefusedWithTheUsage(String line, String refusal) {
		CliRun run = CliRun.of(args(line));
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.out()).isEmpty();
		assertThat(run.err()).startsWith("rimebook possible: " + refusal)
			.contains("\nusage: java -jar rimebook.jar possible ");
	}

	@Test
	void badFilesAreRefused() {
		assertRefused("entry,J1\nA,1\n", "FILE:line 2, column 2: every team has been marked; ");
		assertRefused("entry,J1\nA,2\nB,\n",
				"FILE:line 1, column 2: the ordinals in column 'J1' do not rank the teams marked so far");
		assertRefused("entry,J1,J2,J3\nA,1,,1\nB,,,\n", "FILE:line 2, column 3: '' in column 'J2' is not an ordinal");
		assertRefused("entry,J1\nA,1\nA,\n", "FILE:line 3, column 1: entry 'A' is also on line 2");
		String earlier = file("entry,place1,place2\nA,1,1\n");
		CliRun run = possible("entry,J1\nA,1\nB,\n", "--earlier", earlier);
		assertThat(run.err()).isEqualTo(earlier + ":line 1, column 3: there are 2 columns of places and 2 factors; "
				+ "expected a column for each factor but the last\n");
		String lacking = file("entry,place1\nA,1\n");
		assertThat(possible("entry,J1\nA,1\nB,\n", "--earlier", lacking).err())
			.startsWith(lacking + ":line 1, column 1: there is no row of entry 'B' of ");
	}

	private void assertRefused(String content, String refusal) {
		CliRun run = possible(content);
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.out()).isEmpty();
		assertThat(run.err()).startsWith(refusal);
	}

	@Test
	void helpTellsEverything() {
		assertThat(CliRun.of("possible", "--help").out()).startsWith("usage: ")
			.contains("--earlier", "--needs", "points");
	}

	private CliRun possible(String content, String... options) {
		String file = file(content);
		List<String> args = new ArrayList<>(List.of("possible", "--method", "majority"));
		args.addAll(List.of(options));
		args.add(file);
		CliRun run = CliRun.of(args.toArray(String[]::new));
		return new CliRun(run.status(), run.out(), run.err().replace(file, "FILE"));
	}

	private String file(String content) {
		try {
			return Files.writeString(Files.createTempFile(this.folder, "file", ".csv"), content).toString();
		}
		catch (IOException ex) {
			throw new java.io.UncheckedIOException(ex);
		}
	}

	private static String[] args(String line) {
		return Stream
			.concat(Stream.of("possible"),
					Arrays.stream(line.split("\\s+")).map((word) -> word.endsWith(".csv") ? CliRun.file(word) : word))
			.toArray(String[]::new);
	}

}
