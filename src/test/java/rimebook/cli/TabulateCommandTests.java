package rimebook.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

class TabulateCommandTests {

	private static final String MARKS_HEADER = "entry,J1 first,J1 second\n";

	@TempDir
	private Path folder;

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			ordinals.majority.csv   | --method majority ordinals.csv
			ordinals.majority.txt   | --method majority --format text ordinals.csv
			ordinals.one-by-one.csv | --method=one-by-one --format=csv ordinals.csv
			ordinals.one-by-one.txt | ordinals.csv --format text --method one-by-one
			places.result.csv       | --combine places.csv --factors 0.5,1.0
			places.result.csv       | --combine=places.csv
			places.result.txt       | --combine places.csv --format text
			places.quarter.csv      | --combine places.csv --factors 0.25,12.5
			""")
	void wholeOutputIsTheOneExpected(String expected, String line) {
		CliRun run = CliRun.of(args(line));
		assertThat(run.err()).isEmpty();
		assertThat(run.out()).isEqualTo(CliRun.content(expected));
		assertThat(run.status()).isZero();
	}

	@ParameterizedTest
	@CsvSource({ "marks.free.csv, --method majority --segment free marks.csv",
			"marks.short.csv, --method majority --segment short marks.csv",
			"marks.mean.csv, --method majority --segment short --shared-ordinals mean marks.csv",
			"marks.one-by-one.txt, --method one-by-one --segment free --format text marks.csv" })
	void marksMakeOrdinalsByTheSegment(String expected, String line) {
		CliRun run = CliRun.of(args(line));
		assertThat(run.err()).isEqualTo("note: " + CliRun.file("marks.csv") + ": not used: columns 'start', 'club'\n");
		assertThat(run.out()).isEqualTo(CliRun.content(expected));
		assertThat(run.status()).isZero();
	}

	@ParameterizedTest
	@CsvSource({ "both, 1", "half, 0.5", "none, 0" })
	void evenComparisonIsWonByTheOption(String option, String wins) {
		CliRun run = tabulate("entry,J1,J2,J3\nA,1,1,2\nB,1,2,1\n", "--method", "one-by-one", "--equal-judges", option);
		assertThat(run.out()).contains("1,A," + wins + ",2,", "1,B," + wins + ",2,");
	}

	@Test
	void evenPanelIsTabulatedWhereAllowed() {
		CliRun run = tabulate("entry,J1,J2\nA,1,2\nB,2,1\n", "--method", "majority", "--even-panel", "allow");
		assertThat(run.out())
			.startsWith(
					"place,entry,majority_place,size_of_majority,total_of_majority,total_ordinals,why\n1,A,2,2,3,3,")
			.contains("\n1,B,2,2,3,3,");
		assertThat(run.status()).isZero();
	}

	@Test
	void incompleteEntriesGoByTheOption() {
		String places = "entry,place1,place2,place3\nA,20,25,\nB,26,24,\n";
		assertThat(tabulate(places, "--factors", "0.2,0.3,0.5", "--combine").out()).contains("\n1,B,,", "\n2,A,,");
		assertThat(tabulate(places, "--factors", "0.2,0.3,0.5", "--incomplete", "last", "--combine").out())
			.contains("\n1,B,,");
		assertThat(tabulate(places, "--factors", "0.2,0.3,0.5", "--incomplete", "total", "--combine").out())
			.contains("\n1,A,,");
	}

	@Test
	void spreadsheetFileIsUnderstood() {
		String plain = tabulate("entry,J1\nA,1\nB,2\n", "--method", "majority").out();
		CliRun run = tabulate("\uFEFF\r\n J1 , ENTRY \r\n\r\n 1,\" A\" \r\n   \r\n\"2\",B\r\n\r\n", "--method",
				"majority");
		assertThat(run).isEqualTo(new CliRun(0, plain, ""));
		assertThat(tabulate("j1,Entry\r1,A\r2,B", "--method", "majority").out()).isEqualTo(plain);
	}

	@Test
	void entryMayHoldCommasQuotesAndLineBreaks() {
		CliRun run = tabulate("entry,J1\n\"A, \"\"first\"\"\nof two\",1\nÉtoile 😀,2\n", "--method", "majority");
		assertThat(run.err()).isEmpty();
		assertThat(run.out()).contains("\n1,\"A, \"\"first\"\"\nof two\",1,", "\n2,Étoile 😀,2,");
	}

	@Test
	void orderOfColumnsAndJudgesIsIrrelevant() {
		assertThat(tabulate("J2,entry,J3,J1\n2,A,1,1\n1,B,2,2\n", "--method", "majority").out())
			.isEqualTo(tabulate("entry,J1,J2,J3\nB,2,1,2\nA,1,2,1\n", "--method", "majority").out());
	}

	/**
	 * As many as no event has: each place is still explained, in a sentence that ends.
	 */
	@Test
	void twentyThousandLevelEntriesAreToldInShort() {
		CliRun run = tabulate(levelEntries(20_000, "J1,J2,J3", "1,1,1"), "--method", "majority");
		assertThat(run.status()).isZero();
		assertThat(run.out()).hasLineCount(20_001)
			.contains("\n1,E29999,1,3,3,3,\"1st, shared with E10000, E10001, E10002, E10003, E10004, E10005, E10006, "
					+ "E10007, E10008, E10009 and 19989 others on equal figures: ")
			.hasSizeLessThan(20_000 * 250);
	}

	/**
	 * Fewer, since each is compared with every other: the time grows with the square.
	 */
	@Test
	void threeThousandLevelEntriesAreToldInShortOneByOneToo() {
		CliRun run = tabulate(levelEntries(3_000, "J1,J2,J3", "1,1,1"), "--method", "one-by-one");
		assertThat(run.status()).isZero();
		assertThat(run.out()).hasLineCount(3_001).contains("E10009 and 2989 others").hasSizeLessThan(3_000 * 250);
	}

	@Test
	void twentyThousandLevelTotalsAreToldInShort() {
		CliRun run = tabulate(levelEntries(20_000, "place1,place2", "1,1"), "--factors", "0.5,1", "--combine");
		assertThat(run.status()).isZero();
		assertThat(run.out()).hasLineCount(20_001).contains("E10009 and 19989 others").hasSizeLessThan(20_000 * 250);
	}

	private static String levelEntries(int number, String columns, String each) {
		return IntStream.range(10_000, 10_000 + number)
			.mapToObj((entry) -> "E" + entry + "," + each)
			.collect(Collectors.joining("\n", "entry," + columns + "\n", "\n"));
	}

	@Test
	void doubtfulAndUnusedThingsAreNoted() {
		CliRun run = tabulate("entry,J1,place,J2,J3\nA,3,1,1,1\nB,1,2,1,2\nC,4,3,3,2\n", "--method", "majority",
				"--segment", "free", "--shared-ordinals", "skip");
		assertThat(run.err()).isEqualTo("note: FILE: not used: column 'place'\n"
				+ "note: FILE: the file has ordinals, so option '--segment' changes nothing\n"
				+ "note: FILE: the file has ordinals, so option '--shared-ordinals' changes nothing\n"
				+ "note: FILE: not a complete ranking of the 3 entries, taken as it stands: column 'J1'\n");
		assertThat(run.status()).isZero();
		assertThat(tabulate("entry,J1,J2,J3\nA,2,3,1\nB,2,2,2\n", "--method", "majority").err())
			.isEqualTo("note: FILE: not a complete ranking of the 2 entries, taken as it stands: columns 'J1', 'J2'\n");
	}

	@ParameterizedTest
	@MethodSource
	void badSegmentFileIsRefusedWithItsPosition(String content, String refusal) {
		assertThat(tabulate(content, "--method", "majority", "--segment", "free"))
			.isEqualTo(new CliRun(2, "", "FILE:" + refusal + "\n"));
	}

	static Stream<org.junit.jupiter.params.provider.Arguments> badSegmentFileIsRefusedWithItsPosition() {
		String header = "; expected entry,J1,...,Jn with ordinals or entry,J1 first,J1 second,... with marks";
		String unclear = " is not understood and may be a judge's; take it out or mend its name";
		String ordinal = "; expected a whole number from 1 to 9999";
		String mark = "; expected 0.0 to 6.0 in steps of 0.1";
		return Stream.of(
				arguments("", "line 1, column 1: the file is empty; expected a header and one row for each entry"),
				arguments("\n \n", "line 1, column 1: the file is empty; expected a header and one row for each entry"),
				arguments("\nentry,J1\n",
						"line 3, column 1: there is no row; expected one for each entry below the header"),
				arguments("team,J1\nA,1\n", "line 1, column 1: there is no column 'entry'" + header),
				arguments("entry,x\nA,good\n", "line 1, column 2: there is no column of a judge" + header),
				arguments("entry,J1,J3\nA,1,1\n",
						"line 1, column 3: column 'J3' does not fit: there is no column 'J2'" + header),
				arguments("entry,J2\nA,1\n",
						"line 1, column 2: column 'J2' does not fit: there is no column 'J1'" + header),
				arguments("entry,J1,J1 first\nA,1,1\n",
						"line 1, column 2: column 'J1' does not fit: there is no column 'J1 second'" + header),
				arguments("entry,J1 first,J1 second,J2 first\nA,1,1,1\n",
						"line 1, column 4: column 'J2 first' does not fit: there is no column 'J2 second'" + header),
				arguments("entry,J1,J2,J3,Jugde 4\nA,1,1,1,1\n",
						"line 1, column 5: column 'Jugde 4'" + unclear + header),
				arguments("entry,J1,J2,J3,J_4,J5\nA,1,1,1,,1\n", "line 1, column 5: column 'J_4'" + unclear + header),
				arguments("entry,J1,K2\nA,1,1\nB,2,x\n", "line 1, column 3: column 'K2'" + unclear + header),
				arguments("\nentry,J1,j1\nA,1,1\n", "line 2, column 3: column 'j1' is there twice" + header),
				arguments("entry,J1,x,J2\nA,1,good,1\n",
						"line 1, column 4: there are 2 judges; expected an odd number, or "
								+ "option '--even-panel allow'"),
				arguments("entry,J1\nA,1\n,2\n", "line 3, column 1: the entry is missing; expected its name or number"),
				arguments("J1,entry\n1,A\n\n2,B\n3,A\n",
						"line 5, column 2: entry 'A' is also on line 2; expected each entry once"),
				arguments("entry,J1,J2,J3\nA,1,2\n",
						"line 2, column 4: the row has 3 fields; expected 4, one for each column of the header"),
				arguments("entry,J1\nA,1\nB,2,3\n",
						"line 3, column 3: the row has 3 fields; expected 2, one for each column of the header"),
				arguments("entry,J1\nA,0\n", "line 2, column 2: '0' in column 'J1' is not an ordinal" + ordinal),
				arguments("entry,J1\nA,1\nB,-2\n", "line 3, column 2: '-2' in column 'J1' is not an ordinal" + ordinal),
				arguments("entry,J1\nA,1.5\n", "line 2, column 2: '1.5' in column 'J1' is not an ordinal" + ordinal),
				arguments("entry,J1\nA,10000\n",
						"line 2, column 2: '10000' in column 'J1' is not an ordinal" + ordinal),
				arguments("entry,J1\nA,\n", "line 2, column 2: '' in column 'J1' is not an ordinal" + ordinal),
				arguments("entry,J1\n\"A\nB\",1\nC,first\n",
						"line 4, column 2: 'first' in column 'J1' is not an ordinal" + ordinal),
				arguments(MARKS_HEADER + "A,6.1,5.0\n",
						"line 2, column 2: '6.1' in column 'J1 first' is not a mark" + mark),
				arguments(MARKS_HEADER + "A,6.0,5.05\n",
						"line 2, column 3: '5.05' in column 'J1 second' is not a mark" + mark),
				arguments(MARKS_HEADER + "A,-0.1,5.0\n",
						"line 2, column 2: '-0.1' in column 'J1 first' is not a mark" + mark),
				arguments(MARKS_HEADER + "A,\"5,0\",5.0\n",
						"line 2, column 2: '5,0' in column 'J1 first' is not a mark" + mark),
				arguments(MARKS_HEADER + "A,7,5.0\n",
						"line 2, column 2: '7' in column 'J1 first' is not a mark" + mark),
				arguments("entry,J1\nA,1\nB,\"2\n",
						"line 3, column 2: the quoted field is not closed; expected a quotation mark at its end"),
				arguments("entry,J1\n\"A\r\n\"\"x\"\"\" y,1\n",
						"line 3, column 1: there is text behind a quoted field; expected a comma or the end of the line"),
				arguments("entry,\"J1\"x\nA,1\n",
						"line 1, column 2: there is text behind a quoted field; expected a comma or the end of the line"),
				arguments("entry,J1\rA,\"1\"2\r",
						"line 2, column 2: there is text behind a quoted field; expected a comma or the end of the line"));
	}

	@ParameterizedTest
	@MethodSource
	void badPlacesFileIsRefusedWithItsPosition(String content, String refusal) {
		assertThat(tabulate(content, "--combine")).isEqualTo(new CliRun(2, "", "FILE:" + refusal + "\n"));
	}

	static Stream<org.junit.jupiter.params.provider.Arguments> badPlacesFileIsRefusedWithItsPosition() {
		String place = "; expected a whole number from 1 to 9999, or nothing";
		return Stream.of(
				arguments("entry,place1\nA,1\n",
						"line 1, column 2: there are 1 columns of places and 2 factors; "
								+ "expected one factor for each segment"),
				arguments("entry,place1,place3\nA,1,1\n",
						"line 1, column 3: column 'place3' does not fit: "
								+ "there is no column 'place2'; expected entry,place1,place2,..."),
				arguments("place1,place2\n1,1\n",
						"line 1, column 1: there is no column 'entry'; expected entry,place1,place2,..."),
				arguments("entry,place1,place2\nA,1,0\n",
						"line 2, column 3: '0' in column 'place2' is not a place" + place),
				arguments("entry,place1,place2\nA,1st,\n",
						"line 2, column 2: '1st' in column 'place1' is not a place" + place),
				arguments("entry,place1,place2\nA,1,\nA,2,\n",
						"line 3, column 1: entry 'A' is also on line 2; expected each entry once"));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '^',
			textBlock = """
					ordinals.csv                                      | option '--method' is missing
					--method sum ordinals.csv                         | option '--method' is 'sum'; expected majority or one-by-one or points
					--method majority                                 | expected one file; got 0
					--method majority ordinals.csv marks.csv          | expected one file; got 2
					--method                                          | option '--method' needs a value
					--method majority --method majority ordinals.csv  | option '--method' is given twice
					--method majority --fast ordinals.csv             | there is no option '--fast'
					-v                                                | there is no option '-v'
					--method majority --format pdf ordinals.csv       | option '--format' is 'pdf'; expected csv or text
					--method majority --segment long marks.csv        | option '--segment' is 'long'; expected free or short
					--method majority --equal-judges half marks.csv   | option '--equal-judges' does not go with '--method majority'
					--combine places.csv other                        | 'other' is one file too many beside '--combine'
					--combine places.csv --method majority            | there is no option '--method' beside '--combine'
					--combine places.csv --factors 0.5,x              | option '--factors' has 'x'; expected numbers from 0.01 to 100, with a point and commas between them, as in 0.5,1.0
					--combine places.csv --factors 0.5,               | option '--factors' has ''; expected numbers from 0.01 to 100, with a point and commas between them, as in 0.5,1.0
					--combine places.csv --factors 0.00,1             | option '--factors' has '0.00'; expected numbers from 0.01 to 100, with a point and commas between them, as in 0.5,1.0
					--combine places.csv --factors 100.01             | option '--factors' has '100.01'; expected numbers from 0.01 to 100, with a point and commas between them, as in 0.5,1.0
					--combine places.csv --factors 1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1 | option '--factors' has 21 factors; expected at most 20
					""")
	void badArgumentsAreRefusedWithTheUsage(String line, String refusal) {
		CliRun run = CliRun.of(args(line));
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.out()).isEmpty();
		assertThat(run.err()).startsWith("rimebook tabulate: " + refusal + "\nusage: java -jar rimebook.jar tabulate ");
	}

	@Test
	void marksNeedTheSegment() {
		CliRun run = tabulate(MARKS_HEADER + "A,5.0,5.0\n", "--method", "majority");
		assertThat(run.err())
			.startsWith("rimebook tabulate: 'FILE' has marks, so option '--segment' is needed\nusage:");
		assertThat(run.status()).isEqualTo(2);
	}

	@Test
	void fileThatCannotBeReadIsRefused() throws IOException {
		assertThat(CliRun.of("tabulate", "--method", "majority", "no-such.csv"))
			.isEqualTo(new CliRun(2, "", "no-such.csv: there is no such file\n"));
		assertThat(CliRun.of("tabulate", "--method", "majority", "no\u0000such.csv"))
			.isEqualTo(new CliRun(2, "", "no\u0000such.csv: there is no such file\n"));
		assertThat(CliRun.of("tabulate", "--method", "majority", this.folder.toString()))
			.isEqualTo(new CliRun(2, "", this.folder + ": the file cannot be read\n"));
		Path latin = Files.write(this.folder.resolve("latin.csv"),
				"entry,J1\nÉtoile,1\n".getBytes(StandardCharsets.ISO_8859_1));
		assertThat(CliRun.of("tabulate", "--method", "majority", latin.toString())).isEqualTo(new CliRun(2, "",
				latin + ":line 2, column 1: the file is not UTF-8 text (byte C9); expected CSV in UTF-8\n"));
	}

	/** ISO 8859-1; what is written as % is a byte that cannot stand in UTF-8. */
	@ParameterizedTest
	@CsvSource({ "%, 1, 1", "'entry,J%', 1, 2", "'entry,J1\\n%,1', 2, 1", "'entry,J1\\r\\nA,1\\r\\nB,%', 3, 2",
			"'entry,J1\\rA,%', 2, 2", "'entry,J1\\n\\nA,%', 3, 2", "'entry,J1\\n\"A, B\",%', 2, 2",
			"'entry,J1\\n\"A\\nB\",%', 3, 2" })
	void theFirstByteThatIsNoTextIsFound(String content, int line, int column) throws IOException {
		String typed = content.replace("\\n", "\n").replace("\\r", "\r").replace('%', 'É') + ",É";
		Path latin = Files.write(this.folder.resolve("latin.csv"), typed.getBytes(StandardCharsets.ISO_8859_1));
		assertThat(CliRun.of("tabulate", "--method", "majority", latin.toString()))
			.isEqualTo(new CliRun(2, "", latin + ":line " + line + ", column " + column
					+ ": the file is not UTF-8 text (byte C9); expected CSV in UTF-8\n"));
	}

	@Test
	void aCharacterThatIsCutOffAtTheEndIsFound() throws IOException {
		Path cut = Files.write(this.folder.resolve("cut.csv"), new byte[] { 'a', ',', 'b', (byte) 0xC3 });
		assertThat(CliRun.of("tabulate", "--method", "majority", cut.toString()).err())
			.isEqualTo(cut + ":line 1, column 2: the file is not UTF-8 text (byte C3); expected CSV in UTF-8\n");
	}

	@Test
	void helpTellsEveryOption() {
		CliRun run = CliRun.of("tabulate", "--help");
		assertThat(run.status()).isZero();
		assertThat(run.err()).isEmpty();
		assertThat(run.out()).contains("--method majority|one-by-one", "--segment short|free", "--shared-ordinals",
				"--equal-judges", "--even-panel", "--combine FILE.csv", "--factors", "--incomplete",
				"--format=csv|text");
	}

	/** Run on a file with this content, called FILE in what comes back. */
	private CliRun tabulate(String content, String... options) {
		try {
			Path file = Files.writeString(this.folder.resolve("sheet.csv"), content);
			List<String> args = new ArrayList<>(List.of("tabulate"));
			args.addAll(Arrays.asList(options));
			args.add(file.toString());
			CliRun run = CliRun.of(args.toArray(String[]::new));
			return new CliRun(run.status(), run.out(), run.err().replace(file.toString(), "FILE"));
		}
		catch (IOException ex) {
			throw new java.io.UncheckedIOException(ex);
		}
	}

	/** Split a line at its spaces and lead the names of files to the test resources. */
	private static String[] args(String line) {
		return Stream
			.concat(Stream.of("tabulate"),
					Arrays.stream(line.split(" "))
						.map((word) -> word.replaceAll("([a-z]+\\.csv)$", CliRun.file("$1").replace("\\", "\\\\"))))
			.toArray(String[]::new);
	}

}
