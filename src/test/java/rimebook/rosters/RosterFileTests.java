package rimebook.rosters;

import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import rimebook.tables.TableFile;

import static org.assertj.core.api.Assertions.assertThat;

class RosterFileTests {

	@ParameterizedTest
	@CsvSource({ "2012-02-29", "2012-2-29", "29.2.2012", "29.02.2012", "2012/02/29" })
	void aDayIsReadHoweverSpreadsheetsWriteIt(String written) {
		assertThat(RosterFile.day(written)).contains(LocalDate.of(2012, 2, 29));
	}

	/** With slashes nobody can say which of the first two is the month. */
	@ParameterizedTest
	@ValueSource(strings = { "2013-02-29", "29/02/2012", "2/29/2012", "12-02-29", "29.2.12", "soon", "41000", "" })
	void whatIsNoDayIsNone(String written) {
		assertThat(RosterFile.day(written)).isEmpty();
	}

	@Test
	void aSpreadsheetsOwnWaysAreUnderstood() {
		TableFile file = RosterFile.read("\uFEFFSurname;First name;Level;Team;Born;Licence;Colour\r\n"
				+ "\"Rime; the younger\";Aila;Junior;Icefern;29.2.2012;12,5;blue\r\n\r\nFirn;Bo;Junior;Icefern;;;\r\n");
		assertThat(file.columnsLeftOut()).containsExactly("colour");
		List<TableFile.Row> rows = file.rows();
		assertThat(rows).extracting(TableFile.Row::line).containsExactly(2, 4);
		assertThat(rows.get(0).value("family_name")).isEqualTo("Rime; the younger");
		assertThat(rows.get(0).value("membership_number")).isEqualTo("12,5");
		assertThat(rows.get(1).value("given_name")).isEqualTo("Bo");
	}

}
