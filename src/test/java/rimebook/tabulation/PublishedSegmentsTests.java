package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

/** Sheets whose places are known, published or constructed, by majority. */
class PublishedSegmentsTests {

	private static final PlacementRules MAJORITY = PlacementRules.majority(SegmentKind.FREE);

	@ParameterizedTest
	@ValueSource(strings = { "segment-1997-champions-series-final-men-short-program",
			"segment-1997-champions-series-final-men-free-skate",
			"segment-1997-champions-series-final-ladies-short-program",
			"segment-1997-champions-series-final-ladies-free-skate", "majority-first-three-of-a-field", "majority-six",
			"majority-total-ordinals-decide", "majority-textbook", "majority-greater-majority",
			"majority-total-of-majority", "majority-total-ordinals", "majority-complete-tie" })
	void everyPlaceIsTheOneKnown(String name) {
		SheetFixtures sheet = SheetFixtures.sheet(name + ".csv");
		assertThat(SheetFixtures.places(PlacementTabulation.ofOrdinals(MAJORITY, sheet.ordinals())))
			.isEqualTo(sheet.places("place"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "majority-six", "majority-complete-tie", "majority-total-ordinals" })
	void handProcedureAgrees(String name) {
		List<EntryOrdinals> ordinals = SheetFixtures.sheet(name + ".csv").ordinals();
		SegmentStanding standing = PlacementTabulation.ofOrdinals(MAJORITY, ordinals);
		assertThat(SheetFixtures.places(standing)).isEqualTo(HandProcedure.places(standing));
	}

	@ParameterizedTest
	@CsvSource({ "majority-first-three-of-a-field, A, 3, 7, 14, 23", "majority-first-three-of-a-field, B, 3, 5, 8, 31",
			"majority-first-three-of-a-field, C, 3, 5, 10, 27", "majority-six, A, 1, 8, 8, 10",
			"majority-six, B, 3, 5, 13, 35", "majority-six, C, 4, 7, 21, 31", "majority-six, D, 4, 7, 23, 35",
			"majority-six, E, 4, 6, 18, 34", "majority-six, F, 5, 5, 20, 44",
			"majority-total-ordinals-decide, A, 3, 4, 11, 29", "majority-total-ordinals-decide, B, 3, 4, 11, 30",
			"majority-textbook, A, 2, 5, 7, 14", "majority-textbook, B, 2, 5, 8, 15",
			"majority-textbook, C, 2, 4, 6, 15" })
	void figuresAreThosePrinted(String name, String entry, int majorityPlace, int size, int total, int all) {
		SegmentStanding standing = PlacementTabulation.ofOrdinals(MAJORITY,
				SheetFixtures.sheet(name + ".csv").ordinals());
		assertThat(standing.row(entry).orElseThrow().figures())
			.isEqualTo(new Figures.MajorityFigures(majorityPlace * 100, size, total * 100, all * 100));
	}

	@ParameterizedTest
	@ValueSource(
			strings = { "majority-six", "majority-complete-tie", "segment-1997-champions-series-final-men-free-skate" })
	void orderOfTheSheetIsIrrelevant(String name) {
		List<EntryOrdinals> ordinals = SheetFixtures.sheet(name + ".csv").ordinals();
		List<EntryOrdinals> reversed = new ArrayList<>(ordinals);
		Collections.reverse(reversed);
		assertThat(PlacementTabulation.ofOrdinals(MAJORITY, reversed))
			.isEqualTo(PlacementTabulation.ofOrdinals(MAJORITY, ordinals));
	}

}
