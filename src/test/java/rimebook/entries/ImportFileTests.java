package rimebook.entries;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import rimebook.shared.RuleViolationException;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

class ImportFileTests {

	private static final String HEADER = "event,club,town,team,spoken_as\n";

	@Test
	void readsRowsWithTheirLines() {
		ImportFile file = ImportFile
			.read(HEADER + "Junior,Beacon SC,Skerrywick, Lanterns ,LAN-terns\n\nAdult,A,B,C,\n");
		assertThat(file.rows()).extracting(EntryImport.Row::line).containsExactly(2, 4);
		assertThat(file.rows().get(0)).isEqualTo(new EntryImport.Row(2, "Junior",
				new EntryImport.Row.Names("Beacon SC", "Skerrywick", "Lanterns", "LAN-terns"), List.of()));
	}

	@Test
	void readsWhatSpreadsheetsWrite() {
		ImportFile file = ImportFile
			.read("\uFEFF" + (HEADER + "Junior,\"Beacon, SC\",T,\"The \"\"L\"\"\",\n").replace("\n", "\r\n"));
		assertThat(file.rows()).singleElement().satisfies((row) -> {
			assertThat(row.names().club()).isEqualTo("Beacon, SC");
			assertThat(row.names().team()).isEqualTo("The \"L\"");
			assertThat(row.line()).isEqualTo(2);
		});
	}

	@Test
	void countsLinesThroughQuotedLineBreaks() {
		ImportFile file = ImportFile.read(HEADER + "J,\"two\nlines\",T,A,\nJ,C,T,B,");
		assertThat(file.rows()).extracting(EntryImport.Row::line).containsExactly(2, 4);
	}

	@Test
	void takesColumnsInAnyOrderAndNamesThoseLeftOut() {
		ImportFile file = ImportFile.read("Team , colour,town,club,EVENT\nLanterns,red,T,C,Junior\n");
		assertThat(file.columnsLeftOut()).containsExactly("colour");
		assertThat(file.rows()).singleElement().satisfies((row) -> {
			assertThat(row.names().team()).isEqualTo("Lanterns");
			assertThat(row.event()).isEqualTo("Junior");
			assertThat(row.names().spokenAs()).isEmpty();
		});
	}

	@ParameterizedTest
	@ValueSource(strings = { "Junior,C,T\n", "Junior,C,T,A,,more\n" })
	void pointsOutARowOfAnotherWidth(String row) {
		assertThat(ImportFile.read(HEADER + row).rows().get(0).problems()).singleElement()
			.extracting(EntryImport.Problem::column)
			.isEqualTo("row");
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "\n\n", "\uFEFF", HEADER, HEADER + "\n \n" })
	void refusesAnEmptyFile(String text) {
		assertThat(refusal(text).code()).isEqualTo("import-empty");
	}

	@ParameterizedTest
	@ValueSource(strings = { ";", "\t", "|", "," })
	void takesWhateverSignStandsBetweenTheColumns(String separator) {
		String file = HEADER.replace(",", separator)
				+ String.join(separator, "Junior", "\"Beacon" + separator + " SC\"", "T", "Rime", "").concat("\n");
		assertThat(ImportFile.read(file).rows()).singleElement()
			.isEqualTo(new EntryImport.Row(2, "Junior",
					new EntryImport.Row.Names("Beacon" + separator + " SC", "T", "Rime", ""), List.of()));
	}

	@Test
	void passesByTheLineThatNamesTheSeparator() {
		assertThat(ImportFile.read("sep=;\r\n\"event\";\"club\";\"town\";\"team\"\r\nJ;C;T;A\r\n").rows())
			.singleElement()
			.isEqualTo(new EntryImport.Row(3, "J", new EntryImport.Row.Names("C", "T", "A", ""), List.of()));
	}

	@Test
	void knowsOtherWordsForTheColumns() {
		ImportFile file = ImportFile.read("Level;Organisation;City;Team  Name;Spoken-as\nJ;C;T;A;ay\n");
		assertThat(file.columnsLeftOut()).isEmpty();
		assertThat(file.rows()).singleElement()
			.isEqualTo(new EntryImport.Row(2, "J", new EntryImport.Row.Names("C", "T", "A", "ay"), List.of()));
		assertThat(refusal("event,level,club,town,team\nJ,J,C,T,A\n").code()).isEqualTo("import-header");
	}

	@ParameterizedTest
	@ValueSource(strings = { "event,club,team\nJ,C,A\n", "Junior,Beacon,Skerrywick,Lanterns,\n",
			"event,club,town,team,team\nJ,C,T,A,B\n" })
	void refusesAHeaderThatLacksOrRepeatsColumns(String text) {
		assertThat(refusal(text).code()).isEqualTo("import-header");
		assertThat(refusal(text)).hasMessageContaining("event,club,town,team,spoken_as");
	}

	@ParameterizedTest
	@ValueSource(strings = { "J,C,T,\"A,\n", "J,C,T,\"A\" x,\n" })
	void namesTheLineWhereQuotationMarksDoNotPairUp(String row) {
		RuleViolationException refusal = refusal(HEADER + "J,C,T,B,\n" + row);
		assertThat(refusal.code()).isEqualTo("import-quotation");
		assertThat(refusal).hasMessageContaining("line 3");
	}

	@Test
	void refusesMoreThanFiveHundredRows() {
		String rows = String.join("\n", IntStream.range(0, 501).mapToObj((i) -> "J,C,T,A" + i + ",").toList());
		assertThat(refusal(HEADER + rows).code()).isEqualTo("import-too-long");
	}

	private static RuleViolationException refusal(String text) {
		return catchThrowableOfType(RuleViolationException.class, () -> ImportFile.read(text));
	}

}
