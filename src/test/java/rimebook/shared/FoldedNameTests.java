package rimebook.shared;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class FoldedNameTests {

	@ParameterizedTest
	@CsvSource(quoteCharacter = '"',
			value = { "Harbour Blades, harbour blades, true", "Harbour Blades, HARBOURBLADES, true",
					"\"Harbour\u00a0 Blades \", Harbour Blades, true", "A\u030abo Ice, \u00e5bo ice, true",
					"Harbour Blades, Harbour Blade, false", "\"\", \"\", false", "\"  \", \"\", false",
					"\"\", Harbour Blades, false", "\"Skater's Cove\", Skater\u2019s Cove, true",
					"\"Skater's Cove\", Skaters Cove, true", "Harbour-Blades, Harbour Blades, true",
					"Harbour Blades S.C., Harbour Blades, true", "Harbour Blades Skating Club, Harbour Blades SC, true",
					"SC Harbour Blades, Harbour Blades, true", "Harbour Figure Skating Club, Harbour FSC, true",
					"Skating Club, SC, false", "Varnholm Skating Club, Varnholm Ice Guild, false" })
	void caseBlanksApostrophesAndFormsDoNotMatterForAClub(String one, String other, boolean same) {
		assertThat(FoldedName.ofClub(one).isSameAs(FoldedName.ofClub(other))).isEqualTo(same);
		assertThat(FoldedName.ofClub(other).isSameAs(FoldedName.ofClub(one))).isEqualTo(same);
	}

	@ParameterizedTest
	@CsvSource(quoteCharacter = '"',
			value = { "Pale Thaw, PALE THAW, true", "\"Tarn's Echo\", Tarns Echo, true", "Winter Club, Winter, false" })
	void teamsHaveNoForm(String one, String other, boolean same) {
		assertThat(FoldedName.of(one).isSameAs(FoldedName.of(other))).isEqualTo(same);
	}

	@ParameterizedTest
	@CsvSource(quoteCharacter = '"',
			value = { "Harbour Blades, Harbor Blades, true", "Harbour Blades, Harbour Blade, true",
					"Lanterns, Lantrens, true", "Lanterns, Latnrens, false", "Harbour, Harbour Blades, true",
					"Harbour Blades, Harbour Lights, false", "Tarn, Tarm, false", "North Quay, North Sound, false",
					"North Quay, South Quay, false", "Club 1, Club 2, false", "Club 1, Club 11, false",
					"Harbour Blades, harbour blades SC, false", "\"\", Tarn, false" })
	void aLikelySlipIsNear(String one, String other, boolean near) {
		assertThat(FoldedName.ofClub(one).isNear(FoldedName.ofClub(other))).isEqualTo(near);
		assertThat(FoldedName.ofClub(other).isNear(FoldedName.ofClub(one))).isEqualTo(near);
	}

}
