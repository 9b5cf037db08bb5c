package rimebook.cli;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

/** {@code tabulate --method points}. */
class PointsCommandTests {

	private static final String ELEMENTS = "entry,number,code,J1,J2\nA,1,X1,1,-1\n";

	private static final String COMPONENTS = "entry,component,factor,J1,J2\nA,Timing,2,5.00,5.25\n";

	private static final String DEDUCTIONS = "entry,item,points\nA,fall,1.00\n";

	private static final String VALUES = "code,base,m3,m2,m1,p1,p2,p3\nX1,1.0,-0.9,-0.6,-0.3,0.5,1.0,1.5\n";

	@TempDir
	private Path folder;

	@ParameterizedTest
	@CsvSource({ "points.short.csv, --segment short", "points.free.csv, --segment=free",
			"points.detail.csv, --detail --segment short", "points.short.txt, --segment short --format text",
			"points.detail.txt, --segment short --format text --detail" })
	void wholeOutputIsTheOneExpected(String expected, String options) {
		CliRun run = PointsFixtureFiles.run("tabulate", options.split(" "));
		assertThat(run).isEqualTo(new CliRun(0, CliRun.content(expected), ""));
	}

	@Test
	void withoutASegmentEqualTotalsShareThePlace() {
		CliRun run = PointsFixtureFiles.run("tabulate");
		assertThat(run.err()).isEqualTo("note: without option '--segment' equal totals share the place\n");
		assertThat(run.out()).contains("\n1,Harbour Lights,64.13,", "\n1,\"Ice, Snow\",64.13,", "\n3,Glacier,");
		assertThat(run.status()).isZero();
	}

	/**
	 * As many as no event has: each place is still explained, in a sentence that ends.
	 */
	@Test
	void twentyThousandLevelEntriesAreToldInShort() {
		CliRun run = tabulate(level("entry,number,code,J1,J2", "1,X1,1,-1"),
				level("entry,component,factor,J1,J2", "Timing,2,5.00,5.25"), null, VALUES);
		assertThat(run.status()).isZero();
		assertThat(run.out()).hasLineCount(20_001).contains("E10009 and 19989 others").hasSizeLessThan(20_000 * 250);
	}

	private static String level(String header, String each) {
		return IntStream.range(10_000, 30_000)
			.mapToObj((number) -> "E" + number + "," + each)
			.collect(Collectors.joining("\n", header + "\n", "\n"));
	}

	@Test
	void deductionsMayBeMissingOrNone() {
		String without = "1,A,11.36,1.10,10.26,0.00,";
		assertThat(tabulate(ELEMENTS, COMPONENTS, null, VALUES).out()).contains("\n" + without);
		assertThat(tabulate(ELEMENTS, COMPONENTS, "points,item,entry\n", VALUES).out()).contains("\n" + without);
		assertThat(tabulate(ELEMENTS, COMPONENTS, DEDUCTIONS + "A,time,0.5\n", VALUES).out())
			.contains("\n1,A,9.86,1.10,10.26,1.50,");
	}

	@Test
	void anEmptyFieldIsAnAbsentMark() {
		CliRun run = tabulate("entry,number,code,J1,J2\nA,1,X1,,-1\n",
				"entry,component,factor,J1,J2\nA,Timing,2,,5.25\n", null, VALUES);
		assertThat(run.out()).contains("\n1,A,11.20,0.70,10.50,0.00,");
	}

	@Test
	void aBaseValueReplacesTheTablesAndNoWorthTakesTheValue() {
		CliRun run = tabulate("entry,number,code,worth,base,J1,J2\nA,1,X1,,2,1,1\nA,2,X1,none,9,3,3\nA,3,Y,none,,,\n",
				COMPONENTS, null, VALUES, "--detail");
		assertThat(run.err()).isEmpty();
		assertThat(run.out()).contains("\nA,element,X1,0.00,0.00,0.00,\n");
		assertThat(run.out())
			.isEqualTo(tabulate("entry,number,code,info,base,J1,J2\nA,1,X1,,2,1,1\nA,2,X1,*,9,3,3\nA,3,Y,*,,,\n",
					COMPONENTS, null, VALUES, "--detail")
				.out());
	}

	@Test
	void theOlderColumnOfElementsWithoutValueIsStillRead() {
		CliRun run = tabulate("entry,number,code,info,base,J1,J2\nA,1,X1,,2,1,1\nA,2,X1,*,9,3,3\nA,3,Y,*!,,,\n",
				COMPONENTS, null, VALUES, "--detail");
		assertThat(run.out()).contains("\nA,element,X1,2.00,0.50,2.50,J1 J2\nA,element,X1,0.00,0.00,0.00,\n"
				+ "A,element,Y,0.00,0.00,0.00,\nA,component,Timing,,5.13,10.26,J1 J2\n");
		assertThat(run.err()).isEqualTo("note: elements.csv: in column 'info' only '*' changes anything, not '!'\n");
	}

	@Test
	void columnsWithoutUseAreNoted() {
		CliRun run = tabulate("club,entry,number,code,J1,J2\nx,A,1,X1,1,-1\n",
				"entry,component,factor,J1,J2,x,y\nA,Timing,2,5.00,5.25,,\n", "entry,item,points,by\nA,fall,1.00,x\n",
				VALUES);
		assertThat(run.err()).isEqualTo("note: elements.csv: not used: column 'club'\nnote: components.csv: not used: "
				+ "columns 'x', 'y'\nnote: deductions.csv: not used: column 'by'\n");
		assertThat(run.status()).isZero();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '^',
			textBlock = """
					A,1,X1,1,-1 | A,0,X1,1,-1    | 2, column 2: '0' in column 'number' is not the number of an element; expected a whole number from 1 to 100
					A,1,X1,1,-1 | A,101,X1,1,-1  | 2, column 2: '101' in column 'number' is not the number of an element; expected a whole number from 1 to 100
					A,1,X1,1,-1 | A,,X1,1,-1     | 2, column 2: '' in column 'number' is not the number of an element; expected a whole number from 1 to 100
					A,1,X1,1,-1 | A,1,,1,-1      | 2, column 3: the code is missing; expected it as called
					A,1,X1,1,-1 | A,1,x1,1,-1    | 2, column 3: 'x1' in column 'code' is not in the table of values; expected a code of that table, or 'none' in column 'worth'
					A,1,X1,1,-1 | A,1,X1,4,-1    | 2, column 4: '4' in column 'J1' is not a grade; expected a whole number from -3 to +3, or nothing where the judge gave none
					A,1,X1,1,-1 | A,1,X1,1,-4    | 2, column 5: '-4' in column 'J2' is not a grade; expected a whole number from -3 to +3, or nothing where the judge gave none
					A,1,X1,1,-1 | A,1,X1,1,1.0   | 2, column 5: '1.0' in column 'J2' is not a grade; expected a whole number from -3 to +3, or nothing where the judge gave none
					A,1,X1,1,-1 | A,1,X1,,       | 2, column 4: Element 1 ('X1') counts but no judge has graded it; expected one grade at least.
					A,1,X1,1,-1 | ,1,X1,1,1      | 2, column 1: the entry is missing; expected its name or number
					A,1,X1,1,-1 | B,1,X1,1,1     | 2, column 1: entry 'B' has no components in components.csv; expected the same entries in both files
					J1,J2       | J1,J3          | 1, column 5: column 'J3' does not fit: there is no column 'J2'; expected entry,number,code,J1,...,Jn with grades; base and worth may be there too
					J1,J2       | x,y            | 1, column 4: column 'x' is not understood and may be a judge's; take it out or mend its name; expected entry,number,code,J1,...,Jn with grades; base and worth may be there too
					number      | rank           | 1, column 1: there is no column 'number'; expected entry,number,code,J1,...,Jn with grades; base and worth may be there too
					code        | element        | 1, column 1: there is no column 'code'; expected entry,number,code,J1,...,Jn with grades; base and worth may be there too
					entry       | team           | 1, column 1: there is no column 'entry'; expected entry,number,code,J1,...,Jn with grades; base and worth may be there too
					""")
	void badElementsAreRefusedWithTheirPosition(String before, String after, String refusal) {
		assertThat(tabulate(ELEMENTS.replace(before, after), COMPONENTS, null, VALUES))
			.isEqualTo(refused("elements", refusal));
	}

	@ParameterizedTest
	@CsvSource({ "-0.01", "1000.01", "high" })
	void badBaseValuesAreRefusedWithTheirPosition(String base) {
		assertThat(tabulate("entry,base,number,code,J1,J2\nA," + base + ",1,X1,1,1\n", COMPONENTS, null, VALUES))
			.isEqualTo(refused("elements", "2, column 2: '" + base + "' in column 'base' is not a base value; "
					+ "expected 0.00 to 1000.00, or nothing where the table holds"));
	}

	@Test
	void anElementNumberedTwiceIsRefused() {
		assertThat(tabulate(ELEMENTS + "\nA,1,X1,2,2\n", COMPONENTS, null, VALUES)).isEqualTo(refused("elements",
				"4, column 2: '1' in column 'number' is also on line 2; expected each element of an entry once"));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '^',
			textBlock = """
					A,Timing,2,5.00,5.25 | A,Timing,0,5.00,5.25                       | 2, column 3: '0' in column 'factor' is not a factor; expected a factor from 0.01 to 100.00
					A,Timing,2,5.00,5.25 | A,Timing,x,5.00,5.25                       | 2, column 3: 'x' in column 'factor' is not a factor; expected a factor from 0.01 to 100.00
					A,Timing,2,5.00,5.25 | A,Timing,2,0.00,5.25                       | 2, column 4: '0.00' in column 'J1' is not a mark; expected 0.25 to 10.00 in steps of 0.25, or nothing where the judge gave none
					A,Timing,2,5.00,5.25 | A,Timing,2,5.00,5.2                        | 2, column 5: '5.2' in column 'J2' is not a mark; expected 0.25 to 10.00 in steps of 0.25, or nothing where the judge gave none
					A,Timing,2,5.00,5.25 | A,Timing,2,5.00,five                       | 2, column 5: 'five' in column 'J2' is not a mark; expected 0.25 to 10.00 in steps of 0.25, or nothing where the judge gave none
					A,Timing,2,5.00,5.25 | A,Timing,2,,                               | 2, column 4: No judge has marked the component 'Timing'; expected one mark at least.
					A,Timing,2,5.00,5.25 | A,,2,5,5                                   | 2, column 2: the component is missing; expected its name
					A,Timing,2,5.00,5.25 | A,Timing,2,5,5;A,Timing,3,5,5             | 3, column 3: '3' in column 'factor' is another factor than on line 2; expected one factor for each component
					A,Timing,2,5.00,5.25 | A,Timing,2,5,5;A,Timing,2.0,5,5           | 3, column 2: 'Timing' in column 'component' is there twice for entry 'A'; expected each component once
					A,Timing,2,5.00,5.25 | A,Timing,2,5,5;B,Timing,2.0,5,5           | 3, column 1: entry 'B' has no elements in elements.csv; expected the same entries in both files
					J1,J2                | J1,x                                       | 1, column 5: column 'x' is not understood and may be a judge's; take it out or mend its name; expected entry,component,factor,J1,...,Jn with marks
					component            | aspect                                     | 1, column 1: there is no column 'component'; expected entry,component,factor,J1,...,Jn with marks
					""")
	void badComponentsAreRefusedWithTheirPosition(String before, String after, String refusal) {
		assertThat(tabulate(ELEMENTS, COMPONENTS.replace(before, after.replace(";", "\n")), null, VALUES))
			.isEqualTo(refused("components", refusal));
	}

	@Test
	void anEntryWithoutAComponentOfTheOthersIsRefused() {
		assertThat(tabulate(ELEMENTS + "B,1,X1,1,1\n", COMPONENTS + "B,Timing,2,5,5\nB,Unison,2,5,5\n", null, VALUES))
			.isEqualTo(refused("components",
					"2, column 1: entry 'A' has no component 'Unison'; expected every " + "component of every entry"));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '^',
			textBlock = """
					A,fall,1.00  | A,fall,-1.00   | 2, column 3: '-1.00' in column 'points' is not a deduction; expected 0.00 to 1000.00, as much as is taken off
					A,fall,1.00  | A,fall,1000.01 | 2, column 3: '1000.01' in column 'points' is not a deduction; expected 0.00 to 1000.00, as much as is taken off
					A,fall,1.00  | A,fall,one     | 2, column 3: 'one' in column 'points' is not a deduction; expected 0.00 to 1000.00, as much as is taken off
					A,fall,1.00  | A,,1.00        | 2, column 2: the item is missing; expected what the points are taken off for
					A,fall,1.00  | B,fall,1.00    | 2, column 1: entry 'B' has no elements in elements.csv; expected the same entries in both files
					item         | what           | 1, column 1: there is no column 'item'; expected entry,item,points
					points       | amount         | 1, column 1: there is no column 'points'; expected entry,item,points
					""")
	void badDeductionsAreRefusedWithTheirPosition(String before, String after, String refusal) {
		assertThat(tabulate(ELEMENTS, COMPONENTS, DEDUCTIONS.replace(before, after), VALUES))
			.isEqualTo(refused("deductions", refusal));
	}

	@ParameterizedTest
	@CsvSource({ "'X1,1.0','X1,one', '2, column 2: '", "'p3\n','p4\n', '1, column 1: '",
			"'code','key', '1, column 1: '" })
	void badValuesAreRefusedWithTheirPosition(String before, String after, String position) {
		CliRun run = tabulate(ELEMENTS, COMPONENTS, null, VALUES.replace(before, after));
		assertThat(run.err()).startsWith("values.csv:line " + position).endsWith("\n").hasLineCount(1);
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.out()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '^',
			textBlock = """
					--method points                                                   | option '--elements' is missing beside '--method points'
					--method=points --elements e                                      | option '--components' is missing beside '--method points'
					--elements e --components c --method points                       | option '--values' is missing beside '--method points'
					--method points extra                                             | 'extra' is one file too many beside '--method points'
					--method points --even-panel allow                                | there is no option '--even-panel' beside '--method points'
					--method points --detail --detail                                 | option '--detail' is given twice
					--method points --detail=yes                                      | option '--detail' should be specified without 'yes' parameter
					--method points --segment long --elements e --components c --values v | option '--segment' is 'long'; expected free or short
					--method points --method majority                                 | option '--method' is given twice
					""")
	void badArgumentsAreRefusedWithTheUsage(String line, String refusal) {
		CliRun run = CliRun.of(("tabulate " + line).split(" "));
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.out()).isEmpty();
		assertThat(run.err()).startsWith("rimebook tabulate: " + refusal + "\nusage: java -jar rimebook.jar tabulate ");
	}

	private static CliRun refused(String file, String refusal) {
		return new CliRun(2, "", file + ".csv:line " + refusal + "\n");
	}

	/** Run on files with these contents, called elements.csv and so on. */
	private CliRun tabulate(String elements, String components, @Nullable String deductions, String values,
			String... options) {
		Stream<String> files = Stream.of("tabulate", "--method", "points", "--elements", file("elements", elements),
				"--components", file("components", components), "--values", file("values", values));
		Stream<String> more = (deductions == null) ? Stream.of()
				: Stream.of("--deductions", file("deductions", deductions));
		CliRun run = CliRun
			.of(Stream.of(files, more, Stream.of(options)).flatMap((part) -> part).toArray(String[]::new));
		return new CliRun(run.status(), run.out(), run.err().replace(this.folder + File.separator, ""));
	}

	private String file(String name, String content) {
		try {
			return Files.writeString(this.folder.resolve(name + ".csv"), content).toString();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
